// How the search ranks what it finds: who looks for a word of the trade wants the guide before the reference.
var Scorer = {
  score: ([page, , , , score]) => score + (page.startsWith("guides/") ? 40 : page.startsWith("lessons/") ? 10 : 0),
  objNameMatch: 11,
  objPartialMatch: 6,
  objPrio: { 0: 15, 1: 5, 2: -5 },
  objPrioDefault: 0,
  title: 15,
  partialTitle: 7,
  term: 5,
  partialTerm: 2,
};
