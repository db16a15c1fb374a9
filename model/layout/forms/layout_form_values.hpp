#pragma once
// What one form's source file gives to the list of forms.

#include "model/layout/forms/layout_form.hpp"

namespace wrapgauge {

class LayoutFormValues {
 public:
  explicit LayoutFormValues(std::map<std::string, double> values) : values_(std::move(values)) {}
  double number(const std::string& name) const { return values_.at(name); }
  int count(const std::string& name) const { return static_cast<int>(values_.at(name)); }
  double metres(const std::string& name) const { return 1e-3 * values_.at(name); }

 private:
  std::map<std::string, double> values_;  // checked, every one of the form present
};

struct LayoutFormMaker {
  LayoutForm form;
  Result<Layout> (*draw)(const LayoutFormValues& values);  // everything but the sheets
};

LayoutFormMaker cuff_layout_form();
LayoutFormMaker sleeve_layout_form();
LayoutFormMaker graduated_sleeve_layout_form();
LayoutFormMaker round_pad_layout_form();
LayoutFormMaker quilted_pack_layout_form();

// Parameters that several forms share.
LayoutParameter fitted_stretch(std::string name, double usual, double least, double most, std::string meaning,
                               LayoutFit fit);
LayoutParameter measured_girth(std::string name, double default_mm, std::string where, double measured_at);
LayoutParameter layout_size(std::string name, double default_mm, double least, double most,
                            std::string meaning);
LayoutParameter layout_count(std::string name, int default_count, int least, int most, std::string meaning);
std::vector<LayoutParameter> band_parameters();  // seam, rim, corner, channel, overlap

}  // namespace wrapgauge
