#pragma once
// A plan that says everything a plan can say of a body from a file.

#include <nlohmann/json.hpp>

namespace wrapgauge {

inline nlohmann::json whole_plan() {
  return nlohmann::json::parse(R"({
    "wrapgauge-plan": 1, "name": "pad", "calibration": "bench/calibration.json",
    "body": {"file": "arm.stl", "unit": "cm", "axis": [0, 0, 2], "part": "forearm", "side": "left", "front": [0, 3, 0],
      "sites_confirmed": {"who": "A. Person, physiotherapist", "when": "2026-11-20", "why": "felt and marked"},
      "repair": [{"step": "drop table", "tolerance_mm": 2, "least_share": 0.3},
               {"step": "drop crumbs", "below_share": 0.2}, {"step": "fill holes", "up_to_mm": 50},
               {"step": "smooth", "passes": 7}, {"step": "pose", "distal": "thick", "turn_deg": 30},
               {"step": "cut", "from_mm": 10, "to_mm": 200}, {"step": "mirror"},
               {"step": "decimate", "edge_mm": 5}]},
    "landmarks": [{"name": "belly", "point_mm": [4, 5, 6]}],
    "regions": [{"name": "soft", "near": "belly", "radius_mm": 30, "tissue_depth_mm": 40,
                 "stiffness_factor": 0.5, "fade_mm": 15},
                {"name": "shin", "point_mm": [7, 8, 9], "by_distance": [{"at_mm": 0, "tissue_depth_mm": 4, "stiffness_factor": 2},
                  {"at_mm": 30, "tissue_depth_mm": 20, "stiffness_factor": 1}]},
                {"name": "wound", "stations_mm": [10, 40], "angles_deg": [330, 390], "no_go": true}],
    "bony_sites": [{"name": "styloid", "point_mm": [1, 2, 3], "radius_mm": 12, "tissue_depth_mm": 4,
                    "kind": "nerve", "status": "from memory", "words": "Keep closing edges away."}],
    "tissue": {"site": "forearm relaxed", "posture": "tense", "stiffness_factor": 2, "poisson": 0.45, "model": "coupled"},
    "layout": {"wrapgauge-layout": 1, "name": "pad",
      "outline": {"rectangle": {"x": 0, "y": 0, "width": 60, "height": 60}},
      "chambers": [{"name": "middle", "rectangle": {"x": 10, "y": 10, "width": 40, "height": 40}}],
      "inlets": [{"name": "pump", "point": [30, 30]}],
      "skin_sheet": {"material": "00-30", "thickness": 1.5},
      "outer_sheet": {"material": "A10", "thickness": 2}},
    "wear": {"anchor": {"point_mm": [10, 20, 30]}, "layout_point_mm": [30, 30], "turn_deg": 90},
    "friction": 0.3,
    "inflation": [{"inlet": "pump", "pressure_mmhg": 30,
      "steps": [{"level": 1, "ramp_s": 1, "hold_s": 2}, {"level": 0.25, "hold_s": 6}]}],
    "limits": {"use": "pulse", "file": "ours.json", "override_reason": "why"},
    "supply": {"syringe": {"capacity_ml": 60, "bore_mm": 28}, "pump_stall_kpa": 40,
      "tubing": {"length_mm": 800, "bore_mm": 2}, "relief_kpa": 4.5, "dead_volume_ml": 3},
    "filling": {"medium": "gel", "celsius": 38, "minutes": 12},
    "cleared_by": {"name": "B. Person", "role": "chest physician", "date": "2026-11-21"},
    "wearers": {"population": "healthy adults", "number": 8, "posture": "sitting", "above_heart_cm": -20,
      "watched_by": "the experimenter", "how_they_tell": "by word"},
    "date": "2026-11-29",
    "session": {"minutes": 12, "hold_s": 2, "off_s": 6, "ramp_s": 0.5},
    "mesh": {"edge_mm": 5, "seam_edge_mm": 1.5, "seam_band_mm": 4},
    "solver": {"bending": false, "relaxed_compression": true, "compare_wrinkled": true, "steps": 3}
  })");
}

}  // namespace wrapgauge
