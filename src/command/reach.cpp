// tauten reach: what to set on a wrench with extensions, joints and bars, and what arrives.
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <stdexcept>

#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/refusal.hpp"
#include "command/said_options.hpp"
#include "shared/pages.hpp"
#include "tauten/question/workings/reach_drawing.hpp"

namespace tauten::command {

namespace {

void write_file(const char* option, const std::string& path, const std::string& text) {
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wb"), std::fclose);
  if (!file)
    throw Error(option, (std::string(option) + " " + in_quotes(path) + " cannot be written: " + std::strerror(errno) +
                         "; name a file in a folder that you may write to")
                            .c_str());
  errno = 0;
  if (std::fwrite(text.data(), 1, text.size(), file.get()) != text.size() || std::fflush(file.get()) != 0)
    throw std::runtime_error(std::string(option) + " " + in_quotes(path) +
                             " could not be written: " + std::strerror(errno));
}

}  // namespace

void add_reach(Program& program, CLI::App* verb) {
  const auto words = add_said_options(program, *verb, shared::reach_inputs());
  const auto table = add_table_options(*verb);
  const auto page = add_page_options(program, *verb);
  auto path = std::make_shared<std::string>();
  CLI::Option* svg = verb->add_option("--svg", *path, "Write a drawing to scale into this file");
  svg->type_name("reach.svg");
  verb->callback([&program, words, table, page, path, svg] {
    if (table->given() && svg->count() > 0)
      throw Error("svg", "--svg draws one answer; leave it out of a list of joints");
    if (table->given()) return answer_file(program, "reach", *table, *words, *page);
    const shared::ReachAnswer answer = shared::try_reach(words->said).value();
    if (svg->count() > 0) write_file("svg", *path, reach_drawing_svg(answer.job, answer));
    if (program.json)
      program.say(json_of(answer));
    else
      print(program, *page, shared::page_of(answer, page->page_units(words->pairs())));
  });
}

}  // namespace tauten::command
