// Which fastener is it, asked and answered in words: for the command line and the C interface.
#pragma once

#include "tauten/part/head_mark.hpp"
#include "tauten/question/identify.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// What is known of the fastener.
struct IdentifyJob {
  std::optional<Length> socket;  ///< or spanner
  std::optional<Length> key;     ///< hexagon key
  std::optional<int> bit;        ///< number of a six-lobed drive
  std::optional<Length> worn;    ///< how far width and tool may differ; absent: as far as is typical of the tool
  std::string property_class;    ///< "" if the mark is not asked for
};

std::span<const Input<IdentifyJob>> identify_inputs();

/// A fastener that it may be.
struct Identified {
  int rank;
  std::string thread;
  std::string head;  ///< standards
  std::string kind;
  int commonness;
  std::string how_common;
  std::optional<Length> socket;
  std::optional<int> drive_number;
  Length diameter;
  Length pitch;
  std::string fit;
  std::string region;
  std::string look;
  Source source;

  template <class V>
  static void fields(V&& visit) {
    visit("rank", &Identified::rank);
    visit("thread", &Identified::thread);
    visit("head", &Identified::head);
    visit("kind", &Identified::kind);
    visit("commonness", &Identified::commonness);
    visit("how_common", &Identified::how_common);
    visit("socket", &Identified::socket);
    visit("drive_number", &Identified::drive_number);
    visit("diameter", &Identified::diameter);
    visit("pitch", &Identified::pitch);
    visit("fit", &Identified::fit);
    visit("region", &Identified::region);
    visit("look", &Identified::look);
    visit("source", &Identified::source);
  }
};

/// What the mark on a head says.
struct ClassMark {
  std::string name;
  std::string marks;
  Stress tensile_strength;
  Stress yield_strength;
  Stress proof_stress;
  bool withdrawn;
  Source source;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &ClassMark::name);
    visit("marks", &ClassMark::marks);
    visit("tensile_strength", &ClassMark::tensile_strength);
    visit("yield_strength", &ClassMark::yield_strength);
    visit("proof_stress", &ClassMark::proof_stress);
    visit("withdrawn", &ClassMark::withdrawn);
    visit("source", &ClassMark::source);
  }
};

struct Identification {
  std::vector<Identified> candidates;  ///< the most likely first
  std::optional<Length> tool;          ///< width of the socket or key that was asked about
  std::optional<ClassMark> property_class;
  std::string unmarked_class = tauten::unmarked_class;  ///< what a head without a mark must be taken for

  template <class V>
  static void fields(V&& visit) {
    visit("candidates", &Identification::candidates);
    visit("tool", &Identification::tool);
    visit("property_class", &Identification::property_class);
    visit("unmarked_class", &Identification::unmarked_class);
  }
};

Outcome<Identification> try_identify(const Call& call);

}  // namespace tauten::shared
