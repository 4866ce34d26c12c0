#include "c_api/boundary.hpp"
#include "shared/registry.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/explain/derivation.hpp"

namespace {

using namespace tauten;
using namespace tauten::c_api;

// The handles are the entries of the registry and the arguments that stand in them.
const Entry& entry_of_handle(const tauten_formula* formula) { return *reinterpret_cast<const Entry*>(formula); }
const Arg& arg_of_handle(const tauten_argument* argument) { return *reinterpret_cast<const Arg*>(argument); }
const tauten_formula* handle(const Entry* entry) { return reinterpret_cast<const tauten_formula*>(entry); }
const tauten_argument* handle(const Arg* arg) { return reinterpret_cast<const tauten_argument*>(arg); }

/// What the inputs are worth, with the sentence that says why.
tauten_status checked(const Entry& entry, const double* x, tauten_error* error) {
  const Check check = entry.check(x);
  const auto status = static_cast<tauten_status>(check.status);
  if (check.status == Status::ok) return status;
  if (check.argument < 0) return fail(error, status, tauten::detail::impossible_error(entry.name, entry.output.name));
  const auto place = static_cast<std::size_t>(check.argument);
  const Arg& arg = entry.inputs[place];
  if (check.status == Status::outside_domain)
    return fail(error, status, tauten::detail::domain_error(entry.name, arg, x[place]));
  const std::string warning = std::string(entry.name) + ": " + arg.name + " is " +
                              quantity_text(x[place], arg.dimension) + ", outside the stated range " +
                              range_text(arg.validity, arg.dimension);
  return fail(error, status, Error(arg.name, warning.c_str()));
}

template <class Real>
tauten_status rows(const tauten_formula* formula, const Real* const* inputs, const ptrdiff_t* steps, Real* out,
                   ptrdiff_t out_step, size_t count) noexcept {
  if (formula == nullptr || inputs == nullptr || steps == nullptr || (out == nullptr && count > 0))
    return TAUTEN_WRONG_INPUT;
  const Entry& entry = entry_of_handle(formula);
  char* columns[tauten::detail::most_inputs + 1];
  std::ptrdiff_t all_steps[tauten::detail::most_inputs + 1];
  const std::size_t arity = entry.inputs.size();
  for (std::size_t i = 0; i < arity; ++i) {
    if (inputs[i] == nullptr && count > 0) return TAUTEN_WRONG_INPUT;
    columns[i] = reinterpret_cast<char*>(const_cast<Real*>(inputs[i]));  // only ever read
    all_steps[i] = steps[i];
  }
  columns[arity] = reinterpret_cast<char*>(out);
  all_steps[arity] = out_step;
  if constexpr (std::is_same_v<Real, double>)
    entry.rows_double(columns, all_steps, count);
  else
    entry.rows_float(columns, all_steps, count);
  return TAUTEN_OK;
}

}  // namespace

extern "C" {

int tauten_c_version(void) { return TAUTEN_C_VERSION; }
const char* tauten_version(void) { return TAUTEN_VERSION; }

size_t tauten_formula_count(void) { return shared::registry().size(); }
const tauten_formula* tauten_formula_at(size_t place) {
  return place < tauten_formula_count() ? handle(&shared::registry()[place]) : nullptr;
}
const tauten_formula* tauten_formula_named(const char* name) {
  return name == nullptr ? nullptr : handle(shared::formula_named(name));
}
const char* tauten_formula_name(const tauten_formula* formula) {
  return formula == nullptr ? nullptr : entry_of_handle(formula).name;
}
const char* tauten_formula_summary(const tauten_formula* formula) {
  return formula == nullptr ? nullptr : entry_of_handle(formula).summary;
}
size_t tauten_formula_arity(const tauten_formula* formula) {
  return formula == nullptr ? 0 : entry_of_handle(formula).inputs.size();
}
const tauten_argument* tauten_formula_input(const tauten_formula* formula, size_t place) {
  return place < tauten_formula_arity(formula) ? handle(&entry_of_handle(formula).inputs[place]) : nullptr;
}
const tauten_argument* tauten_formula_output(const tauten_formula* formula) {
  return formula == nullptr ? nullptr : handle(&entry_of_handle(formula).output);
}
const char* tauten_argument_name(const tauten_argument* argument) {
  return argument == nullptr ? nullptr : arg_of_handle(argument).name;
}
const char* tauten_argument_symbol(const tauten_argument* argument) {
  return argument == nullptr ? nullptr : arg_of_handle(argument).symbol;
}
const char* tauten_argument_unit(const tauten_argument* argument) {
  return argument == nullptr ? nullptr : describe(arg_of_handle(argument).dimension).si_unit;
}

tauten_status tauten_argument_read(const tauten_argument* argument, const char* text, double* si, tauten_error* error) {
  return guarded_status(error, [&] {
    if (argument == nullptr || text == nullptr || si == nullptr) return null_pointer(error);
    *si = tauten::detail::nan;
    const Arg& arg = arg_of_handle(argument);
    const Outcome<double> read = try_read_quantity(arg.name, text, arg.dimension);
    if (!read) return fail(error, TAUTEN_WRONG_INPUT, read.error());
    *si = *read;
    return TAUTEN_OK;
  });
}

tauten_status tauten_evaluate(const tauten_formula* formula, const double* inputs, double* value, tauten_error* error) {
  return guarded_status(error, [&] {
    if (formula == nullptr || inputs == nullptr || value == nullptr) return null_pointer(error);
    const Entry& entry = entry_of_handle(formula);
    *value = entry.value(inputs);
    return checked(entry, inputs, error);
  });
}

tauten_status tauten_gradient(const tauten_formula* formula, const double* inputs, double* value, double* slopes,
                              tauten_error* error) {
  return guarded_status(error, [&] {
    if (formula == nullptr || inputs == nullptr || value == nullptr || slopes == nullptr) return null_pointer(error);
    const Entry& entry = entry_of_handle(formula);
    *value = entry.gradient(inputs, slopes);
    return checked(entry, inputs, error);
  });
}

tauten_status tauten_evaluate_columns(const tauten_formula* formula, const double* const* inputs,
                                      const ptrdiff_t* steps, double* out, ptrdiff_t out_step, size_t count) {
  return rows(formula, inputs, steps, out, out_step, count);
}

tauten_status tauten_evaluate_columns_float(const tauten_formula* formula, const float* const* inputs,
                                            const ptrdiff_t* steps, float* out, ptrdiff_t out_step, size_t count) {
  return rows(formula, inputs, steps, out, out_step, count);
}

size_t tauten_formula_text(const tauten_formula* formula, tauten_notation notation, char* buffer, size_t size) {
  if (formula == nullptr || notation < TAUTEN_TEXT || notation > TAUTEN_MATHML) return write("", buffer, size);
  return guarded(size_t{0}, [&] {
    return write(expression_text(entry_of_handle(formula), static_cast<Notation>(notation)), buffer, size);
  });
}

size_t tauten_explain(const tauten_formula* formula, const double* inputs, tauten_notation notation, char* buffer,
                      size_t size) {
  const bool known = notation == TAUTEN_TEXT || notation == TAUTEN_LATEX || notation == TAUTEN_MATHML;
  if (formula == nullptr || inputs == nullptr || !known) return write("", buffer, size);
  return guarded(size_t{0}, [&] {
    const Entry& entry = entry_of_handle(formula);
    const Layout layout = notation == TAUTEN_LATEX    ? Layout::latex
                          : notation == TAUTEN_MATHML ? Layout::html
                                                      : Layout::text;
    const auto text = try_derivation_text(derivation_of(entry, {inputs, entry.inputs.size()}), {&entry, 1}, layout);
    return write(text ? *text : std::string(), buffer, size);
  });
}

}  // extern "C"
