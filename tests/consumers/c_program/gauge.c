/* What clamp load does a torque leave in the feet of a pump? In C, with nothing but tauten.h. */
#include <stdio.h>
#include <string.h>
#include <tauten.h>

static int ask(void) {
  const tauten_pair job[] = {{"thread", "M16"}, {"class", "8.8"}, {"torque", "130N.m"}, {"condition", "oiled"}};
  tauten_error error;
  tauten_answer* answer = NULL;
  if (tauten_ask("clamp", job, sizeof job / sizeof *job, &answer, &error) != TAUTEN_OK) {
    fprintf(stderr, "%s: %s\n", error.argument, error.message);
    return 1;
  }
  printf("clamp load %.1f to %.1f kN: %s\n", tauten_answer_number(answer, "candidates/0/clamp_load/low") / 1e3,
         tauten_answer_number(answer, "candidates/0/clamp_load/high") / 1e3,
         tauten_answer_words(answer, "candidates/0/verdict"));
  int wrong = strcmp(tauten_answer_words(answer, "candidates/0/verdict"), "may be slack") != 0;
  tauten_answer_free(answer);
  return wrong;
}

static int evaluate(void) {
  const tauten_formula* formula = tauten_formula_named("bearing_torque");
  const double x[] = {25e3, 0.12, 20e-3};
  double value = 0;
  char text[200];
  if (tauten_evaluate(formula, x, &value, NULL) != TAUTEN_OK) return 1;
  tauten_formula_text(formula, TAUTEN_TEXT, text, sizeof text);
  printf("%s = %s = %g %s\n", tauten_argument_symbol(tauten_formula_output(formula)), text, value,
         tauten_argument_unit(tauten_formula_output(formula)));
  return !(value > 29.99 && value < 30.01); /* 25 kN x 0.12 x 10 mm */
}

int main(void) { return tauten_c_version() == TAUTEN_C_VERSION ? ask() || evaluate() : 2; }
