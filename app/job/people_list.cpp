#include "app/job/people_list.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "bodyforms/anthropometry.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/csv_table.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/plan/body_label.hpp"
#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

const Form* form_of(const Plan& plan) {
  const auto* body = std::get_if<BodyForm>(&plan.body);
  if (!body) return nullptr;
  for (const Form& form : forms())
    if (form.name == body->form) return &form;
  return nullptr;
}

const FormParameter* parameter_of(const Form& form, const std::string& name) {
  for (const FormParameter& parameter : form.parameters)
    if (parameter.name == name) return &parameter;
  return nullptr;
}

// The plan's form without the measures of its own person.
BodyForm without_measures(const BodyForm& body, const Form& form) {
  BodyForm left = body;
  std::erase_if(left.parameters, [&](const auto& given) {
    const FormParameter* parameter = parameter_of(form, given.first);
    return parameter && parameter->follows_person();
  });
  return left;
}

// What one column of a list holds.
struct Column {
  enum class Kind { kId, kMeasure, kSex, kPercentile, kSide, kFile, kUnit };
  Kind kind = Kind::kId;
  std::string parameter;  // of a measure
  bool inches = false;
};

std::optional<Column> column_of(const std::string& heading, const Form* form) {
  static const std::map<std::string, Column::Kind> kinds = {
      {"id", Column::Kind::kId},     {"sex", Column::Kind::kSex},   {"percentile", Column::Kind::kPercentile},
      {"side", Column::Kind::kSide}, {"file", Column::Kind::kFile}, {"unit", Column::Kind::kUnit}};
  if (const auto known = kinds.find(heading); known != kinds.end()) return Column{known->second, "", false};
  if (!form) return std::nullopt;
  for (const char* unit : {"", "_mm", "_in"}) {
    const std::string ending = unit;
    if (!heading.ends_with(ending)) continue;
    const std::string name = heading.substr(0, heading.size() - ending.size());
    for (const std::string& candidate : {name, "girth_" + name})
      if (parameter_of(*form, candidate)) return Column{Column::Kind::kMeasure, candidate, ending == "_in"};
  }
  return std::nullopt;
}

std::string columns_known(const Form* form) {
  std::string known = "id, file, unit, side";
  if (!form) return known;
  known = "id, sex, percentile, side, file, unit";
  for (const FormParameter& parameter : form->parameters) known += ", " + parameter.name;
  return known;
}

Result<std::vector<Column>> columns_of(const CsvTable& table, const Form* form, const std::string& name) {
  std::vector<Column> columns;
  std::set<std::string> measures;
  for (const std::string& heading : table.heading) {
    const auto column = column_of(heading, form);
    if (!column)
      return bad_input(name + " has a column '" + clean_text(heading) +
                       "' that is no measure here; there are: " + columns_known(form) +
                       " (with _in for inches).");
    if (column->kind == Column::Kind::kMeasure && !measures.insert(column->parameter).second)
      return bad_input(name + " gives " + column->parameter + " in two columns: keep one.");
    columns.push_back(*column);
  }
  const auto has = [&](Column::Kind kind) {
    return std::any_of(columns.begin(), columns.end(), [&](const Column& c) { return c.kind == kind; });
  };
  if (!has(Column::Kind::kId)) return bad_input(name + " has no column 'id': give each person one.");
  const bool file = has(Column::Kind::kFile);
  if (!file && !form)
    return bad_input(name +
                     " has no column 'file', and the plan's body is no form with measures: name a "
                     "body file for each person.");
  if (file && (!measures.empty() || has(Column::Kind::kSex) || has(Column::Kind::kPercentile)))
    return bad_input(name + " gives body files and measures: keep one kind in one list.");
  if (!file && measures.empty() && !has(Column::Kind::kPercentile))
    return bad_input(name + " gives no measures: add a column for each of those that you took, such as " +
                     form->parameters.front().name + "; there are: " + columns_known(form) + ".");
  if (has(Column::Kind::kPercentile) && !has(Column::Kind::kSex))
    return bad_input(name + " has a column 'percentile' and none for 'sex': say whose.");
  return columns;
}

// Reads the rows of one list.
class PeopleReader {
 public:
  PeopleReader(const Plan& plan, const std::filesystem::path& list, std::vector<Column> columns)
      : plan_(plan), list_(list), columns_(std::move(columns)), form_(form_of(plan)) {}

  Result<PersonTried> person(const CsvTable::Row& row) {
    line_ = row.line;
    PersonTried person;
    BodyFile file;
    BodyForm form;
    if (form_) form = without_measures(std::get<BodyForm>(plan_.body), *form_);
    bool has_file = false;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      const std::string& cell = row.cells[c];
      has_file = has_file || columns_[c].kind == Column::Kind::kFile;
      if (auto problem = take(columns_[c], cell, person, file, form)) return *problem;
    }
    if (has_file) return with_file(std::move(person), std::move(file));
    if (auto problem = form_problem(form)) return *problem;
    person.body = std::move(form);
    return person;
  }

 private:
  Problem at(const std::string& what) const {
    return bad_input("Line " + std::to_string(line_) + " of " + clean_text(list_.filename().string()) + ": " +
                     what);
  }

  std::optional<Problem> take(const Column& column, const std::string& cell, PersonTried& person,
                              BodyFile& file, BodyForm& form) {
    switch (column.kind) {
      case Column::Kind::kId:
        return take_id(cell, person);
      case Column::Kind::kMeasure:
        return take_measure(column, cell, form);
      case Column::Kind::kSex:
        form.person.sex = sex_from_name(cell);
        if (form.person.sex || cell.empty()) return std::nullopt;
        return at("sex is '" + clean_text(cell) + "': write male or female, or leave it empty.");
      case Column::Kind::kPercentile:
        if (cell.empty()) return std::nullopt;
        form.person.percentile = number_in_cell(cell);
        if (form.person.percentile && *form.person.percentile >= 1.0 && *form.person.percentile <= 99.0)
          return std::nullopt;
        return at("percentile is '" + clean_text(cell) + "': write a number from 1 to 99.");
      case Column::Kind::kSide: {
        const auto side = side_from_name(cell);
        if (!side && !cell.empty()) return at("side is '" + clean_text(cell) + "': write right or left.");
        if (side) form.person.side = *side, file.side = *side;
        return std::nullopt;
      }
      case Column::Kind::kFile:
        if (cell.empty()) return at("no body file is named.");
        file.file = std::filesystem::absolute(list_.parent_path() / cell).lexically_normal();
        return std::nullopt;
      case Column::Kind::kUnit:
        if (cell.empty()) return std::nullopt;
        file.unit = unit_from_name(cell);
        return file.unit ? std::nullopt
                         : std::optional(at("unit is '" + clean_text(cell) + "': write mm, cm, m or in."));
    }
    return std::nullopt;
  }

  std::optional<Problem> take_id(const std::string& cell, PersonTried& person) {
    person.id = clean_text(cell);  // of control characters nothing is left
    if (person.id.empty()) return at("the person has no id.");
    const auto [before, fresh] = lines_.emplace(person.id, line_);
    if (fresh) return std::nullopt;
    return at("the id '" + person.id + "' stands in line " + std::to_string(before->second) +
              " already: give each person one of their own.");
  }

  // An empty cell leaves the measure to the survey.
  std::optional<Problem> take_measure(const Column& column, const std::string& cell, BodyForm& form) {
    if (cell.empty()) return std::nullopt;
    const auto value = number_in_cell(cell);
    if (!value) {
      const bool comma = cell.find(',') != std::string::npos;
      return at(column.parameter + " is '" + clean_text(cell) + "': write a number" +
                (comma ? " with a point for its decimals." : " alone; the unit stands in the heading."));
    }
    form.parameters[column.parameter] = *value * (column.inches ? 25.4 : 1.0);
    return std::nullopt;
  }

  // A measure that hardly anyone has and that would be usual in another unit is asked about, not changed.
  std::optional<Problem> form_problem(const BodyForm& form) const {
    for (const BeyondSurvey& measure : beyond_survey_of(form.form, form.parameters))
      for (const auto& [name, factor] :
           {std::pair("inches", 25.4), {"centimetres", 10.0}, {"metres", 1000.0}})
        if (const double as_mm = measure.value * factor; as_mm >= measure.least && as_mm <= measure.most)
          return at(measure.parameter + " " + number_text(measure.value, 4) + ": is this " + name +
                    "? Write mm, or inches in a column " + measure.parameter + "_in.");
    if (const auto problem = form_values_problem(form.form, form.parameters, form.person))
      return at(problem->message);
    const auto missing = measures_missing(*form_, form.parameters);
    if (form.person.sex || missing.empty()) return std::nullopt;
    return at("no sex is given, so that the survey cannot supply " + missing.front() +
              ": add a column for it, or for sex.");
  }

  Result<PersonTried> with_file(PersonTried person, BodyFile file) const {
    const auto bytes = wrapgauge::read_file(file.file);
    if (!bytes) return at(bytes.problem().message);
    std::string all = *bytes;
    if (std::filesystem::exists(label_file_of(file.file)))
      if (const auto label = wrapgauge::read_file(label_file_of(file.file))) all += *label;
    person.file_hash = hash_text(all);
    person.body = std::move(file);
    return person;
  }

  const Plan& plan_;
  std::filesystem::path list_;
  std::vector<Column> columns_;
  const Form* form_;
  std::map<std::string, int> lines_;  // where each id stands
  int line_ = 0;
};

}  // namespace

Result<std::vector<PersonTried>> people_of_survey(const Plan& plan, const std::vector<double>& percentiles,
                                                  const std::vector<Sex>& sexes) {
  const Form* form = form_of(plan);
  if (!form)
    return bad_input(
        "The plan's body is a file, which has no percentiles: give --list with a body file, or "
        "a plan whose body is a form.");
  const BodyForm anyone = without_measures(std::get<BodyForm>(plan.body), *form);
  if (std::none_of(form->parameters.begin(), form->parameters.end(),
                   [](const FormParameter& parameter) { return parameter.follows_person(); }))
    return bad_input("The form '" + form->name +
                     "' takes no measures from the survey, so that all percentiles are one body.");
  std::vector<double> rising = percentiles;
  std::sort(rising.begin(), rising.end());
  if (std::adjacent_find(rising.begin(), rising.end()) != rising.end())
    return bad_input("A percentile is given twice: keep one.");
  std::vector<PersonTried> people;
  for (const Sex sex : sexes)
    for (const double percentile : rising) {
      const std::string group = sex == Sex::kMale ? "men" : "women";
      PersonTried person{group + " p" + number_text(percentile, 4), anyone, "",
                         SurveyPlace{group, normal_deviate(percentile)}};
      auto& body = std::get<BodyForm>(person.body);
      body.person.sex = sex;
      body.person.percentile = percentile;
      if (const auto problem = form_values_problem(body.form, body.parameters, body.person)) return *problem;
      people.push_back(std::move(person));
    }
  return people;
}

Result<std::vector<PersonTried>> people_of_list(const Plan& plan, const std::filesystem::path& list) {
  const auto table = read_csv(list, {kMostPeople, "people", ""});
  if (!table) return table.problem();
  auto columns = columns_of(*table, form_of(plan), clean_text(list.filename().string()));
  if (!columns) return columns.problem();
  PeopleReader reader(plan, list, std::move(columns).value());
  std::vector<PersonTried> people;
  for (const CsvTable::Row& row : table->rows) {
    auto person = reader.person(row);
    if (!person) return person.problem();
    people.push_back(std::move(person).value());
  }
  return people;
}

}  // namespace wrapgauge
