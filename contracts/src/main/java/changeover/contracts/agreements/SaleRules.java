package changeover.contracts.agreements;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where and how a contract about heating or cooling equipment may be sold, as dated rows of the law of a place.
 *
 * <p>The place is that of the home, not of the business (ISO 3166-2, {@code CA-QC}).
 */
public final class SaleRules {

    /**
     * One rule of a place.
     *
     * @param refused whether a sale that way is refused; else the note is only shown
     * @param from first day, in
     * @param until day it no longer stands, out; null while it stands
     */
    public record Row(
            String place,
            Set<SaleChannel> channels,
            boolean refused,
            LocalDate from,
            @Nullable LocalDate until,
            Wording why,
            String source) {

        boolean stands(String where, SaleChannel channel, LocalDate day) {
            return place.equals(where)
                    && channels.contains(channel)
                    && !day.isBefore(from)
                    && (until == null || day.isBefore(until));
        }
    }

    /** Code of the refusal; its facts are {@code channel}, {@code why} and {@code source}. */
    public static final String CHANNEL_REFUSED = "agreement.channel-refused";

    private static final Set<SaleChannel> AWAY = EnumSet.of(SaleChannel.HOME, SaleChannel.ELSEWHERE);

    private static final List<Row> ROWS = List.of(
            new Row(
                    "CA-QC",
                    AWAY,
                    true,
                    LocalDate.of(2024, 11, 7),
                    null,
                    new Wording(
                            "In Quebec a contract about heating or air-conditioning equipment, and any maintenance or"
                                    + " warranty contract linked to it, may not be made away from the business’s own"
                                    + " premises, even when the customer asked us in. Send the offer by e-mail and let"
                                    + " the customer accept it from there, or at the counter.",
                            "Au Québec, un contrat portant sur un appareil de chauffage ou de climatisation, de même que"
                                    + " tout contrat d’entretien ou de garantie qui s’y rattache, ne peut pas se conclure"
                                    + " hors de l’établissement du commerçant, même à l’invitation du client. Envoyez"
                                    + " l’offre par courriel : le client l’acceptera à distance, ou au comptoir."),
                    "Office de la protection du consommateur, « Contrat interdit » (commerçants itinérants)"),
            new Row(
                    "CA-ON",
                    EnumSet.of(SaleChannel.HOME),
                    false,
                    LocalDate.of(2018, 3, 1),
                    null,
                    new Wording(
                            "Ontario: equipment such as furnaces, air conditioners and water heaters may be sold at the"
                                    + " home only when the customer invited you to sell it; a contract made there can be"
                                    + " cancelled for 10 days.",
                            "Ontario : un appareil comme un générateur d’air chaud, un climatiseur ou un chauffe-eau ne"
                                    + " peut se vendre à domicile que si le client vous y a invité pour cela; le contrat"
                                    + " conclu à domicile peut être annulé pendant 10 jours."),
                    "Community Legal Education Ontario, door-to-door sales guide; Consumer Protection Act, 2002"));

    private SaleRules() {}

    /** Why a sale that way is refused at that place on that day; empty when it may be made. */
    public static Optional<Refusal> refusal(String place, SaleChannel channel, LocalDate day) {
        return rows(place, channel, day).stream()
                .filter(Row::refused)
                .findFirst()
                .map(row -> Refusal.of(
                                CHANNEL_REFUSED,
                                Map.of("channel", channel.wording(), "why", row.why, "source", row.source))
                        .at("channel"));
    }

    /** What whoever sells that way must know, where the sale itself may be made. */
    public static List<Row> notes(String place, SaleChannel channel, LocalDate day) {
        return rows(place, channel, day).stream().filter(row -> !row.refused).toList();
    }

    private static List<Row> rows(String place, SaleChannel channel, LocalDate day) {
        return ROWS.stream().filter(row -> row.stands(place, channel, day)).toList();
    }
}
