/*
 * tauten: torque and tension of threaded fasteners. The C interface.
 *
 * Formulas by name, on single numbers or columns; and whole questions, asked in pairs of words ("torque", "48N.m") and
 * answered by a tree that is walked by path ("candidates/0/clamp_load/low") or written as JSON.
 *
 *   tauten_error error;
 *   tauten_answer* answer = NULL;
 *   const tauten_pair job[] = {{"thread", "M10"}, {"property_class", "8.8"}, {"torque", "48N.m"}, {"condition", "oiled"}};
 *   if (tauten_ask("clamp", job, 4, &answer, &error) != TAUTEN_OK) puts(error.message);
 *   double low = tauten_answer_number(answer, "candidates/0/clamp_load/low");   (newtons)
 *   tauten_answer_free(answer);
 *
 * Numbers are SI: m, m2, rad, N, N.m, Pa, m/N, N/m, K, J, 1/K. Text is UTF-8 and has a decimal point in every locale.
 * All results are estimates, none is a release
 * for service.
 *
 * Memory: a tauten_answer belongs to the caller, who frees it once. Every other pointer that is returned points at
 * constants of the library or into the answer it was asked of. A tauten_error belongs to the caller and may be NULL.
 * Where memory runs out the status is TAUTEN_NO_MEMORY or the size 0; only tauten_formula_text and tauten_explain end
 * the program if it runs out while they build the formula.
 *
 * Threads: there is no global state. Any function may be called from any thread at any time; one answer may be read by
 * several threads at once, as long as none frees it.
 *
 * Null pointers: functions that return a status refuse them with TAUTEN_WRONG_INPUT, the others return 0, NULL or NaN.
 *
 * Stability: within one TAUTEN_C_VERSION nothing that is declared here changes or goes away. New functions, keys,
 * formulas and members of answers may be added.
 */
#ifndef TAUTEN_H
#define TAUTEN_H

#include <stddef.h>

/* A program that links the DLL defines TAUTEN_DLL; the library itself is built with TAUTEN_DLL_BUILD. Windows is untested. */
#if defined(_WIN32) && defined(TAUTEN_DLL_BUILD)
#define TAUTEN_API __declspec(dllexport)
#elif defined(_WIN32) && defined(TAUTEN_DLL)
#define TAUTEN_API __declspec(dllimport)
#elif defined(__GNUC__)
#define TAUTEN_API __attribute__((visibility("default")))
#else
#define TAUTEN_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

#define TAUTEN_C_VERSION 1

/* What became of a call. From TAUTEN_OUTSIDE_DOMAIN on there is no result. */
typedef enum tauten_status {
  TAUTEN_OK = 0,
  TAUTEN_UNUSUAL = 1,        /* there is a result, but an input lies outside the range that the source states */
  TAUTEN_OUTSIDE_DOMAIN = 2, /* an input lies where the formula has no meaning */
  TAUTEN_IMPOSSIBLE = 3,     /* inputs are fine one by one, but together they have no solution */
  TAUTEN_WRONG_INPUT = 4,    /* a name, key or text is not understood, a value is refused, or a pointer is null */
  TAUTEN_NO_MEMORY = 5,
  TAUTEN_STOPPED = 6 /* the progress call or the watch asked for it */
} tauten_status;

/* Why. The message is one sentence for the user: the argument, its value with unit, the allowed range, what to do. */
typedef struct tauten_error {
  char argument[64]; /* the argument at fault, "" where no single one is */
  char message[512];
} tauten_error;

/* The version of this interface that the library was built with, and of the library: 1, "0.1.0". */
TAUTEN_API int tauten_c_version(void);
TAUTEN_API const char* tauten_version(void);

/* ---- Formulas ---- */

typedef struct tauten_formula tauten_formula;
typedef struct tauten_argument tauten_argument; /* an input or the output of a formula */

TAUTEN_API size_t tauten_formula_count(void);
TAUTEN_API const tauten_formula* tauten_formula_at(size_t place);             /* NULL from count on */
TAUTEN_API const tauten_formula* tauten_formula_named(const char* name);      /* NULL if there is none */
TAUTEN_API const char* tauten_formula_name(const tauten_formula* formula);    /* "bearing_torque" */
TAUTEN_API const char* tauten_formula_summary(const tauten_formula* formula); /* what it gives */
TAUTEN_API size_t tauten_formula_arity(const tauten_formula* formula);        /* how many inputs */
TAUTEN_API const tauten_argument* tauten_formula_input(const tauten_formula* formula, size_t place);
TAUTEN_API const tauten_argument* tauten_formula_output(const tauten_formula* formula);
TAUTEN_API const char* tauten_argument_name(const tauten_argument* argument);   /* "bearing_friction" */
TAUTEN_API const char* tauten_argument_symbol(const tauten_argument* argument); /* "mu_K" */
TAUTEN_API const char* tauten_argument_unit(const tauten_argument* argument);   /* SI; "" for a plain number */

/* Reads "48N.m", "35lbf.ft", "5/8in" for an input. Anything but a plain number needs its unit. On failure *si is NaN. */
TAUTEN_API tauten_status tauten_argument_read(const tauten_argument* argument, const char* text, double* si,
                                              tauten_error* error);

/* The value at `inputs`, one number per input in order. Without a result the value is NaN. TAUTEN_UNUSUAL comes with a
 * value and with a warning instead of the error. */
TAUTEN_API tauten_status tauten_evaluate(const tauten_formula* formula, const double* inputs, double* value,
                                         tauten_error* error);

/* The value and its partial derivatives, one per input; `slopes` has room for all of them. */
TAUTEN_API tauten_status tauten_gradient(const tauten_formula* formula, const double* inputs, double* value,
                                         double* slopes, tauten_error* error);

/* Row by row over columns. `inputs` holds per input a pointer to its first row, `steps` the bytes from row to row: 0
 * for one number in all rows, negative for backwards. Rows outside the domain become NaN. `out` may be the very memory
 * of an input column, but not shifted against it. */
TAUTEN_API tauten_status tauten_evaluate_columns(const tauten_formula* formula, const double* const* inputs,
                                                 const ptrdiff_t* steps, double* out, ptrdiff_t out_step, size_t rows);
TAUTEN_API tauten_status tauten_evaluate_columns_float(const tauten_formula* formula, const float* const* inputs,
                                                       const ptrdiff_t* steps, float* out, ptrdiff_t out_step,
                                                       size_t rows);

typedef enum tauten_notation {
  TAUTEN_TEXT = 0, /* F_M*(P/(2 pi) + ...) */
  TAUTEN_LATEX = 1,
  TAUTEN_ALGEBRA = 2, /* argument names in the syntax of Python, for a computer-algebra system */
  TAUTEN_MATHML = 3   /* for a browser, which needs no script for it */
} tauten_notation;

/* Functions that write text return how many bytes the whole text has, without the zero at its end. At most `size` bytes
 * are written, the zero included; with size 0 the buffer may be NULL. 0 means that there is no such text. */

/* The formula itself, without the symbol of its output. */
TAUTEN_API size_t tauten_formula_text(const tauten_formula* formula, tauten_notation notation, char* buffer,
                                      size_t size);

/* The derivation: formula, values put in, result, source and warning, as text, with TAUTEN_LATEX for a document that uses
 * amsmath, or with TAUTEN_MATHML as HTML. There is none in TAUTEN_ALGEBRA. */
TAUTEN_API size_t tauten_explain(const tauten_formula* formula, const double* inputs, tauten_notation notation,
                                 char* buffer, size_t size);

/* ---- Questions and answers ---- */

typedef struct tauten_answer tauten_answer;

typedef struct tauten_pair {
  const char* key;  /* "torque", "clamp_load", "property_class"; also as on the command line, "clamp-load", "class" */
  const char* text; /* "48N.m" */
} tauten_pair;

/* Asks "clamp" (the clamp load that a torque leaves), "torque" (the torque for a clamp load), "identify" (which fastener
 * it is), "thread" (all about a thread), "turn" and "curve" (tightening by angle), "reach" (what to set on a wrench with
 * extensions) or "free" (whether a stuck fastener comes free before something gives). The catalogue lists all questions
 * with their keys. On failure *answer is NULL. */
TAUTEN_API tauten_status tauten_ask(const char* question, const tauten_pair* pairs, size_t count,
                                    tauten_answer** answer, tauten_error* error);

/* The same for work that may take long, such as "free" with millions of trials: `watch` is called some twenty times a second, on
 * the thread that asks. Anything but 0 stops: the call returns TAUTEN_STOPPED, within a fifth of a second. A library that is
 * built without exceptions never calls it. */
typedef int (*tauten_watch)(void* context);
TAUTEN_API tauten_status tauten_ask_watched(const char* question, const tauten_pair* pairs, size_t count,
                                            tauten_watch watch, void* context, tauten_answer** answer,
                                            tauten_error* error);

/* The same answer laid out for people, the line that is needed first, in the units that are typed. It is an answer of words:
   tauten_answer_words(answer, "").
   format: "text" (also if null), "markdown" or "html" */
TAUTEN_API tauten_status tauten_page(const char* question, const tauten_pair* pairs, size_t count, const char* format,
                                     tauten_answer** answer, tauten_error* error);

/* How an answer comes about, from what is given over each formula to the verdict, as words like tauten_page. There is one for
   "clamp", "torque", "turn", "reach" and "free".
   format: "text" (also if null), "markdown", "latex" (for a document that uses amsmath) or "html" (with MathML) */
TAUTEN_API tauten_status tauten_explain_answer(const char* question, const tauten_pair* pairs, size_t count,
                                               const char* format, tauten_answer** answer, tauten_error* error);

/* All there is to know about the library, itself a tree: formulas/NAME/{summary,inputs/NAME/{symbol,unit,...},output,
 * sources}, questions/NAME/{summary,keys/KEY/{example,help,words,repeats}}, version. */
TAUTEN_API tauten_status tauten_catalogue(tauten_answer** answer, tauten_error* error);

TAUTEN_API void tauten_answer_free(tauten_answer* answer);

/* A path is names and places, from 0, with / between them; "" is the answer itself. */
typedef enum tauten_kind {
  TAUTEN_ABSENT = 0,  /* the path leads nowhere */
  TAUTEN_UNKNOWN = 1, /* no value is known; null in JSON */
  TAUTEN_NUMBER = 2,
  TAUTEN_TRUTH = 3,
  TAUTEN_WORDS = 4,
  TAUTEN_LIST = 5,
  TAUTEN_RECORD = 6 /* a list of named values */
} tauten_kind;

TAUTEN_API tauten_kind tauten_answer_kind(const tauten_answer* answer, const char* path);
TAUTEN_API size_t tauten_answer_size(const tauten_answer* answer, const char* path); /* items of a list or record */
TAUTEN_API const char* tauten_answer_key(const tauten_answer* answer, const char* path, size_t place);
/* NaN if it is not a number; the truth is 0 or 1. */
TAUTEN_API double tauten_answer_number(const tauten_answer* answer, const char* path);
TAUTEN_API const char* tauten_answer_unit(const tauten_answer* answer, const char* path); /* of a number, SI */
TAUTEN_API const char* tauten_answer_words(const tauten_answer* answer, const char* path);
TAUTEN_API size_t tauten_answer_json(const tauten_answer* answer, const char* path, char* buffer, size_t size);

/* ---- Questions over columns ---- */

typedef struct tauten_table tauten_table;

/* What the rows say under one key: texts or numbers in SI, one for each row; the other pointer is NULL. A null or empty text
 * and NaN mean that the row does not say it. */
typedef struct tauten_column {
  const char* key; /* "torque", "clamp_load" */
  const char* const* texts;
  const double* numbers;
} tauten_column;

/* Called five times a second, on the thread that asks, with the rows that are done. Anything but 0 stops. */
typedef int (*tauten_progress)(size_t rows_done, size_t rows, void* context);

/* Asks a question for every row, as tauten_ask does for one. A row that is refused has its sentence in the column "error" and
 * spoils no other. `same` holds for all rows that do not say it themselves. `figures` are the names of columns that are wanted,
 * "clamp_load_low"; with 0 of them the usual ones. "warnings" (codes of notices) and "error" always come last. `progress` may
 * be NULL. It works on the thread that asks: several threads may each ask for a part of the rows. On failure *table is NULL. */
TAUTEN_API tauten_status tauten_ask_columns(const char* question, const tauten_pair* same, size_t same_count,
                                            const tauten_column* columns, size_t column_count, size_t rows,
                                            const char* const* figures, size_t figure_count, tauten_progress progress,
                                            void* context, tauten_table** table, tauten_error* error);

TAUTEN_API void tauten_table_free(tauten_table* table);
TAUTEN_API size_t tauten_table_rows(const tauten_table* table);
TAUTEN_API size_t tauten_table_columns(const tauten_table* table);
TAUTEN_API const char* tauten_table_name(const tauten_table* table, size_t column); /* NULL from the count on */
TAUTEN_API const char* tauten_table_unit(const tauten_table* table, size_t column); /* SI; NULL for a column of texts */
/* One number for each row, NaN where none is known; a truth is 0 or 1. NULL for a column of texts. */
TAUTEN_API const double* tauten_table_numbers(const tauten_table* table, size_t column);
/* The text of a row, "" where there is none; NULL for a column of numbers. */
TAUTEN_API const char* tauten_table_text(const tauten_table* table, size_t column, size_t row);

#ifdef __cplusplus
}
#endif

#endif
