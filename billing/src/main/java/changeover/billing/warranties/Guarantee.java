package changeover.billing.warranties;

import java.time.LocalDate;

/**
 * Somebody answers for so many months, from a day on.
 *
 * @param of a kind of work, a part's code, or a place and a kind of machine
 * @param kind code of a kind of machine; empty for every kind and for what is no machine
 * @param source what it rests on; empty for our own word
 */
public record Guarantee(String of, String kind, LocalDate from, int months, String source) {}
