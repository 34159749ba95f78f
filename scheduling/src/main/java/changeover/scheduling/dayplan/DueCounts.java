package changeover.scheduling.dayplan;

/**
 * What the day's page counts.
 *
 * @param late visits whose last day is over and that nobody closed
 * @param dueWithoutDay visits that may be made by the end of the month and have no day
 * @param today visits that stand in today's plan
 * @param todayClosed those of them that are over
 * @param unkept promises of agreements in force that no visit keeps
 * @param householdLate tasks of the households whose day is over
 */
public record DueCounts(int late, int dueWithoutDay, int today, int todayClosed, int unkept, int householdLate) {}
