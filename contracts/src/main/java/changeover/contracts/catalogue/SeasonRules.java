package changeover.contracts.catalogue;

import changeover.contracts.calendar.Climate;

/**
 * How one business counts seasons.
 *
 * @param carriesOpenSeason whether a season that is still open on the first day of a term is kept in that term; then the
 *     season still open when the term ends is left to the next one
 */
public record SeasonRules(Climate climate, boolean carriesOpenSeason) {

    /** A cold climate, and an open season is kept. */
    public static final SeasonRules USUAL = new SeasonRules(Climate.cold(), true);
}
