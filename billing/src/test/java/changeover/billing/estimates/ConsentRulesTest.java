package changeover.billing.estimates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Where a yes to a repair may be signed on the spot, and where it comes by the customer's link or a call with the office. */
class ConsentRulesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final String SOURCE = "A letter of our lawyer of 3 November";

    @Test
    void in_quebec_a_yes_comes_by_the_link_or_by_a_call() {
        check("CA-QC", ConsentChannel.LINK, DAY, false, List.of(), "may");
        check("CA-QC", ConsentChannel.CALL, DAY, false, List.of(), "may");
        check("CA-QC", ConsentChannel.SITE, DAY, false, List.of(), "estimate.channel-refused");
        check("CA-QC", ConsentChannel.SITE, DAY, true, List.of(), "estimate.channel-refused");
    }

    /** Office de la protection du consommateur, « Contrat interdit »: the ban stands since 7 November 2024. */
    @Test
    void the_ban_has_its_first_day() {
        check("CA-QC", ConsentChannel.SITE, LocalDate.of(2024, 11, 6), false, List.of(), "may");
        check("CA-QC", ConsentChannel.SITE, LocalDate.of(2024, 11, 7), false, List.of(), "estimate.channel-refused");
    }

    @Test
    void the_owner_opens_it_with_a_source_for_a_visit_that_was_asked_for() {
        List<SiteConsent> own = List.of(row("CA-QC", DAY, true));
        check("CA-QC", ConsentChannel.SITE, DAY, true, own, "may");
        check("CA-QC", ConsentChannel.SITE, DAY, false, own, "estimate.channel-refused");
        check("CA-QC", ConsentChannel.SITE, DAY.minusDays(1), true, own, "estimate.channel-refused");
        check("CA-NB", ConsentChannel.SITE, DAY, true, own, "may");
    }

    @Test
    void the_newest_row_of_the_place_decides() {
        List<SiteConsent> own = List.of(row("CA-QC", DAY.minusDays(9), true), row("CA-QC", DAY, false));
        check("CA-QC", ConsentChannel.SITE, DAY.minusDays(1), true, own, "may");
        check("CA-QC", ConsentChannel.SITE, DAY, true, own, "estimate.site-not-here");
        check("CA-QC", ConsentChannel.CALL, DAY, true, own, "may");
    }

    @Test
    void elsewhere_every_way_is_open_unless_the_owner_closes_it() {
        check("CA-ON", ConsentChannel.SITE, DAY, false, List.of(), "may");
        check("CA-ON", ConsentChannel.SITE, DAY, true, List.of(row("CA-ON", DAY, false)), "estimate.site-not-here");
        check("CA-ON", ConsentChannel.LINK, DAY, true, List.of(row("CA-ON", DAY, false)), "may");
    }

    private static SiteConsent row(String place, LocalDate from, boolean allowed) {
        return new SiteConsent(new UUID(0, 1), place, from, allowed, SOURCE);
    }

    private static void check(
            String place,
            ConsentChannel channel,
            LocalDate day,
            boolean askedFor,
            List<SiteConsent> own,
            String expected) {
        assertEquals(
                expected,
                ConsentRules.refusal(place, channel, day, askedFor, own)
                        .map(Refusal::code)
                        .orElse("may"));
    }
}
