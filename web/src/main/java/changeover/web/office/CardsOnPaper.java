package changeover.web.office;

import changeover.billing.documents.Air;
import changeover.billing.documents.CardSheet;
import changeover.billing.documents.TagSheet;
import changeover.billing.documents.band.DayWords;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.Bundles;
import changeover.web.session.MachineInWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns a house card into what is printed: the card itself, and a sticker for each machine. */
@ApplicationScoped
public class CardsOnPaper {

    /** As many facts as a sticker has lines for. */
    private static final int ON_A_STICKER = 4;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    CardSheet card(HouseCard card, List<AccessCodes.Shown> shown, String link, Locale locale) {
        CardWords words = Bundles.of(CardWords.class, locale);
        Business business = businesses.current();
        BusinessProfile.Facts profile = businesses.profile().facts();
        return new CardSheet(
                locale,
                business.name(),
                profile.phone(),
                today.day(),
                card.line(),
                List.of(card.line(), card.place()),
                card.dangers().stream().map(danger -> warning(danger, words)).toList(),
                card.gettingIn(),
                shown.stream()
                        .map(one ->
                                new CardSheet.Pair((kind(one.kind(), words) + " " + one.label()).strip(), one.secret()))
                        .toList(),
                card.people().stream()
                        .map(who -> new CardSheet.Person(who.name(), parts(who, words), who.phone()))
                        .toList(),
                card.toBeRead(),
                Stream.concat(card.machines().stream(), card.common().stream())
                        .map(CardsOnPaper::unit)
                        .toList(),
                card.findings().stream()
                        .map(open -> new CardSheet.OpenFinding(
                                FindingLevel.ofCode(open.level()), open.day(), open.machine(), open.text()))
                        .toList(),
                visits(card, words),
                next(card, locale),
                card.promised() ? card.year() : null,
                link);
    }

    TagSheet tags(HouseCard card, String link, Locale locale) {
        Business business = businesses.current();
        return new TagSheet(
                locale,
                business.name(),
                businesses.profile().facts().phone(),
                Stream.concat(card.machines().stream(), card.common().stream())
                        .map(machine -> new TagSheet.Tag(
                                machine.name(),
                                machine.big().isEmpty() ? machine.kind() : machine.big(),
                                machine.core() ? Air.UP : air(machine),
                                machine.core(),
                                pairs(machine.first(ON_A_STICKER)),
                                link))
                        .toList());
    }

    private static String warning(HouseCard.Danger danger, CardWords words) {
        String kind = switch (danger.kind()) {
            case "dog" -> words.dog();
            case "ladder" -> words.ladder();
            case "asbestos" -> words.asbestos();
            default -> words.other();
        };
        return danger.note().isEmpty() ? kind : kind + ". " + danger.note();
    }

    private static String kind(String code, CardWords words) {
        return switch (code) {
            case "key" -> words.key();
            case "alarm" -> words.alarm();
            default -> words.code();
        };
    }

    private static String parts(PeopleOfHomes.Who who, CardWords words) {
        return who.parts().stream()
                .map(part -> switch (part) {
                    case "signs" -> words.signs();
                    case "pays" -> words.pays();
                    case "lives" -> words.lives();
                    case "lets_in" -> words.lets_in();
                    default -> words.gets_report();
                })
                .collect(Collectors.joining(", "));
    }

    private static CardSheet.Unit unit(MachineInWords machine) {
        return new CardSheet.Unit(
                machine.name(), machine.big().isEmpty() ? null : machine.big(), air(machine), pairs(machine.facts()));
    }

    private static @Nullable Air air(MachineInWords machine) {
        return machine.air() == null ? null : Air.valueOf(machine.air().toUpperCase(Locale.ROOT));
    }

    private static List<CardSheet.Pair> pairs(List<MachineInWords.Said> facts) {
        return facts.stream()
                .map(fact -> new CardSheet.Pair(fact.caption(), fact.value()))
                .toList();
    }

    private static List<CardSheet.Visit> visits(HouseCard card, CardWords words) {
        var visits = new ArrayList<CardSheet.Visit>();
        for (HouseCard.Trip trip : card.past()) {
            if (trip.day() != null && visits.size() < 5) {
                String how = trip.standing().equals("closed") ? words.closed() : trip.why() == null ? "" : trip.why();
                visits.add(new CardSheet.Visit(trip.day(), trip.technician() == null ? "" : trip.technician(), how));
            }
        }
        return visits;
    }

    private static @Nullable String next(HouseCard card, Locale locale) {
        DayWords days = DayWords.of(locale);
        return card.coming().stream()
                .map(HouseCard.Trip::day)
                .filter(Objects::nonNull)
                .findFirst()
                .map(days::withWeekday)
                .orElse(null);
    }
}
