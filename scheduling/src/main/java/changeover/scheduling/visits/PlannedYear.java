package changeover.scheduling.visits;

/** An agreement's year as the rule lays it out. */
record PlannedYear(YearToPlan of, VisitPlan plan) {}
