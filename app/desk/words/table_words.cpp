#include "app/desk/words/table_words.hpp"

#include <QtGlobal>

namespace wrapgauge {
namespace {

constexpr const char* kTableWords[] = {
    // How sure a number is; rows of a limit set; where compression classes are measured.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "confirmed"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "from memory"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "judgement"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "derived"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "common practice"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "secondary page"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "soft"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "bony"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "circumferential"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "sustained"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "short hold"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "pulse"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "ankle"),
    // What a finding comes from.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "fastening alone"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "inflation"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "edge or strap"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "bone or nerve"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "runaway"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "time"),
    // Parts of the body.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "finger"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "hand"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "wrist"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "forearm"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "elbow"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "upper arm"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "shoulder"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "chest"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "abdomen"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "back"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "hip"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "thigh"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "knee"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "lower leg"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "foot"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "head"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "neck"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "face"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "test object"),
    // Where the limits come from.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "judgement: the model has not been calibrated against pressure readings"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "a third of the 9 kPa that killed rat muscle within 2 h in Linder-Ganz et al. 2006, "
                      "below the 30 mmHg at which nerves changed in Lundborg et al. 1982"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "half of the soft row; skin blood flow was already greatly reduced at 10 mmHg in Daly "
                      "et al. 1976 (authors from memory)"),
    QT_TRANSLATE_NOOP(
        "wrapgauge::Phrase",
        "below the 20 to 25 mmHg at which leg veins of people lying down closed in Partsch & Partsch 2005"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "below the 45 mmHg after which lymph flow did not restart in Miller & Seale 1987 and "
                      "the 60 mmHg that blocked nerves in Lundborg et al. 1982"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "half of the soft row"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "at most the 20 to 25 mmHg of leg veins lying down in Partsch & Partsch 2005; half of "
                      "the 40 mmHg that stops venous return in the upper arm, read on a secondary page"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "half of the lowest pressure that halved the blood flow of the hand in Johansson, Hagg "
                      "& Fischer 2002"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "judgement, 40 mmHg stops venous return in laboratory use, read on a secondary "
                      "page; sensory block came quickly at 60 mmHg in Lundborg et al. 1982; the lowest "
                      "pressure that closed an arm's artery was 120 mmHg"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "judgement, share of tissue compressed predicts lost skin blood flow better than load "
                      "does in Sacks et al., authors from memory; the figures themselves are judgement"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "judgement, working stretch of cast silicone walls, no source"),
    QT_TRANSLATE_NOOP(
        "wrapgauge::Phrase",
        "judgement, a place counts as rested below the warning of the strictest sustained row; skin is "
        "looked at again 30 min after a session in common nursing practice, from memory"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "judgement, one stuck valve must not lead past the tourniquet stop round a limb, nor "
                      "far past the limit anywhere"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "judgement, a wearer who wants out does not wait, no source"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "judgement, 41 C for applied parts in IEC 60601-1, second edition, read on a secondary "
                      "page; pain from cold at 15 C of skin in ISO 13732-3 work; the times are judgement"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "from memory, burn thresholds of ISO 13732-1:2006, any material, healthy skin, not for "
                      "the head nor for a tenth of the body or more"),
    // What to mind at the bony sites that the forms bring.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Pressed here the sole goes numb."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "The superficial peroneal nerve comes under the skin here."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "Bone behind, skin in front: pressed here the foot drops. Keep devices below it."),
    QT_TRANSLATE_NOOP(
        "wrapgauge::Phrase",
        "Bone behind, skin in front: pressed here the foot drops. No band, edge or strap on it."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "Pressed here the palm and thumb go numb: no closing edge or seam on it."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Pressed here the little finger goes numb."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Tight bands above the wrist numb the back of the thumb."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "The nerve comes out of its groove behind the elbow here."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Bone and tendons."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Keep clear of brows and eyes."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "The leg's blood returns here: nothing firm, least of all with the knee bent."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Tight edges here numb the outer thigh."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "The leg's blood returns here: no firm band."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Waist and hip bands press it against the bone."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Leave room to breathe."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "Behind the medial epicondyle, between bone and skin: nothing may press here."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "It winds round the humerus; a band or edge here can drop the wrist."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "In the groove on the inner side."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "Where the pulse is felt."),
    // What starting layouts are.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "A cuff of chambers in rows, each row with its own inlet, and a cloth strap; straight, "
                      "or tapered with the limb."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "A tapered sleeve, alike tight at both ends, of chambers in bands; its closing lines "
                      "slant with the limb."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "A tapered sleeve that is tighter at its distal end; inflate its bands less and less "
                      "towards proximal."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "A round haptic pad, taped or glued on by its rim: a middle chamber and open rings "
                      "round it, each with its own inlet."),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "A pack that covers part of the girth: one chamber held flat by a grid of inset spots, "
                      "and a cloth strap round the rest of the limb."),
    // What is wrong with a shape of a drawing.
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "has points that are not pairs of numbers"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "has path data that breaks off, or with a number too few or too many"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "has more than 2 MB of path data"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "has its path in its style (d), which is not read; write it as an attribute"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "has a curve that cannot be followed"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "has more than 10 000 points"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "has a coordinate that is not a number or lies more than 100 m away"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "is given by too few points on it to make a curve"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "has no points"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "does not lie in the plane of the drawing"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase", "is a mesh, not a line"),
    QT_TRANSLATE_NOOP("wrapgauge::Phrase",
                      "is drawn with a width that changes, so no width is taken from it"),
};

}  // namespace

std::span<const char* const> table_words_known() {
  return kTableWords;
}

}  // namespace wrapgauge
