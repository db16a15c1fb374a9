#include "app/desk/session/marked_sites.hpp"

#include <algorithm>

#include "app/desk/session/skin_place.hpp"
#include "bodyforms/standard_sites.hpp"
#include "model/body/part_rules.hpp"
#include "model/wrap/carry_sites.hpp"

namespace wrapgauge {
namespace {

bool is_called(const std::vector<StandardSite>& standard, const std::string& name) {
  return std::any_of(standard.begin(), standard.end(),
                     [&](const StandardSite& site) { return site.name == name; });
}

std::vector<StandardSite> standard_of(std::optional<BodyPart> part) {
  return part ? standard_sites(*part) : std::vector<StandardSite>{};
}

Problem side_missing(BodyPart part) {
  return bad_input(Phrase::worded("the part '%1' has a left and a right: say which it is, then mark.",
                                  {table_words(std::string(body_part_name(part)))}));
}

// The front that someone gave; that of an earlier marking is none.
std::optional<Vec3> front_given(const BodyFile& file, const Body& body,
                                const std::optional<Vec3>& earlier_front) {
  if (file.front && file.front != earlier_front) return file.front;
  return body.front;
}

// Front and side do not move what lies on the skin, but sites of the other side lie elsewhere.
bool lies_alike(const Plan& a, const Plan& b) {
  const auto bare = [](auto body) {
    if (auto* file = std::get_if<BodyFile>(&body)) file->front.reset();
    return body;
  };
  return a.part == b.part && bare(a.body) == bare(b.body);
}

}  // namespace

std::optional<BodyPart> part_of(const Plan& plan, const Body& body) {
  const auto part = agreed_part(body.name, body.part, plan.part);
  return part ? *part : std::nullopt;
}

std::optional<BodySide> side_of(const Plan& plan, const Body& body) {
  const auto* file = std::get_if<BodyFile>(&plan.body);
  const auto said = file ? file->side : std::nullopt;
  if (said && body.side && *said != *body.side) return std::nullopt;
  return said ? said : body.side;
}

bool side_is_clear(const Plan& plan, const Body& body) {
  const auto part = part_of(plan, body);
  return part && (!is_paired(*part) || side_of(plan, body));
}

std::vector<StandardSite> places_to_mark(const Plan& plan, const Body& body) {
  if (!std::holds_alternative<BodyFile>(plan.body) || !body.bony_sites.empty()) return {};
  return standard_of(part_of(plan, body));
}

Result<MarkedSites> with_sites_marked(const Plan& plan, const Body& body,
                                      const std::vector<Landmark>& landmarks,
                                      const std::optional<Vec3>& earlier_front) {
  const auto standard = places_to_mark(plan, body);
  if (standard.empty())
    return bad_input(Phrase::worded("this body has no standard places to mark: add its sites by hand."));
  CarryOptions options;
  options.part = *part_of(plan, body);
  options.side = side_of(plan, body);
  if (!is_paired(options.part)) options.side.reset();
  if (!side_is_clear(plan, body)) return side_missing(options.part);
  options.front = front_given(std::get<BodyFile>(plan.body), body, earlier_front);
  const auto carried = carry_sites(body, standard, landmarks, options);
  if (!carried) return carried.problem();
  MarkedSites marked{plan, {}, carried->beyond, carried->rests_on};
  if (!options.front) marked.front = std::get<BodyFile>(marked.plan.body).front = carried->front;
  auto& sites = marked.plan.bony_sites;
  std::erase_if(sites, [&](const BonySite& site) { return is_called(standard, site.name); });
  for (const SiteProposal& proposal : carried->proposals) sites.push_back(proposal.site);
  marked.plan = with_places_settled(std::move(marked.plan));
  return marked;
}

std::vector<std::size_t> sites_to_decide(const Plan& plan, const Body& body) {
  const auto standard = places_to_mark(plan, body);
  std::vector<std::size_t> decided;
  for (std::size_t i = 0; i < plan.bony_sites.size(); ++i)
    if (is_proposed(plan.bony_sites[i]) || is_called(standard, plan.bony_sites[i].name)) decided.push_back(i);
  return decided;
}

int proposed_in_label(const Body& body) {
  return static_cast<int>(std::count_if(body.bony_sites.begin(), body.bony_sites.end(), is_proposed));
}

Plan with_site_confirmed(Plan plan, std::size_t site, bool confirmed) {
  plan.bony_sites.at(site).status = confirmed ? "confirmed" : kProposedSite;
  return plan;
}

void doubt_what_was_said(const Plan& before, Plan& plan) {
  if (lies_alike(before, plan)) return;
  if (before.part != plan.part) {
    if (plan.sites_confirmed == before.sites_confirmed) plan.sites_confirmed.reset();
    if (plan.cleared_by == before.cleared_by) plan.cleared_by.reset();
  }
  for (BonySite& site : plan.bony_sites)
    if (std::any_of(kBodyParts.begin(), kBodyParts.end(),
                    [&](BodyPart part) { return is_called(standard_sites(part), site.name); }))
      site.status = kProposedSite;
}

}  // namespace wrapgauge
