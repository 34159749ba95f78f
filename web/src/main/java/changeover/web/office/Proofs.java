package changeover.web.office;

import changeover.billing.documents.ProofSheet;
import changeover.billing.documents.Words;
import changeover.billing.documents.band.DayWords;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.DoneInHome;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts the proof of maintenance of a home together, in the language of whoever must believe it. */
@ApplicationScoped
public class Proofs {

    private record Who(LocalDate day, String by, boolean household) {}

    @Inject
    DoneInHome done;

    @Inject
    AllEquipment equipment;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    ProofSheet of(Home home, Locale locale) {
        Words words = Words.in(locale);
        BusinessProfile.Facts profile = businesses.profile().facts();
        return new ProofSheet(
                locale,
                businesses.current().name(),
                business(profile, words),
                today.day(),
                home.line(),
                List.of(HouseCards.place(home.facts())),
                machines(home, words, locale),
                days(home, words, locale));
    }

    private List<ProofSheet.Machine> machines(Home home, Words words, Locale locale) {
        List<Equipment> common = home.buildingId().map(equipment::ofBuilding).orElse(List.of());
        return Stream.of(equipment.ofHome(home.id()), common, equipment.takenOutOf(home.id()))
                .flatMap(List::stream)
                .map(machine -> machine(machine, words, locale))
                .toList();
    }

    private static ProofSheet.Machine machine(Equipment machine, Words words, Locale locale) {
        Equipment.Facts facts = machine.facts();
        LocalDate ended = machine.endedOn().orElse(null);
        List<String> said = new ArrayList<>();
        say(said, facts.make());
        say(said, facts.model());
        say(said, facts.serial() == null ? null : words.say("proof.serial", "number", facts.serial()));
        say(said, day(words, "proof.installed", facts.installedOn(), locale));
        say(said, day(words, "proof.taken-out", ended, locale));
        return new ProofSheet.Machine(machine.name(), String.join(", ", said));
    }

    private static List<String> business(BusinessProfile.Facts profile, Words words) {
        List<String> lines = new ArrayList<>();
        String licence = profile.licence();
        say(lines, profile.street());
        say(lines, profile.phone());
        say(lines, licence == null ? null : words.say("proof.licence", "number", licence));
        return lines;
    }

    private static void say(List<String> lines, @Nullable String text) {
        if (text != null && !text.isBlank()) {
            lines.add(text);
        }
    }

    private static @Nullable String day(Words words, String key, @Nullable LocalDate day, Locale locale) {
        return day == null ? null : words.say(key, "day", DayWords.of(locale).full(day));
    }

    /** What one person did on one day stands together, machine by machine. */
    private List<ProofSheet.Day> days(Home home, Words words, Locale locale) {
        Map<Who, Map<String, List<String>>> days = new LinkedHashMap<>();
        for (DoneInHome.Done one : done.of(home.id())) {
            days.computeIfAbsent(new Who(one.day(), one.by(), one.household()), _ -> new LinkedHashMap<>())
                    .computeIfAbsent(one.machine() == null ? "" : one.machine(), _ -> new ArrayList<>())
                    .add(work(one, words, locale));
        }
        return days.entrySet().stream()
                .map(day -> new ProofSheet.Day(
                        day.getKey().day(),
                        day.getKey().by().isEmpty() ? null : day.getKey().by(),
                        day.getKey().household(),
                        day.getValue().entrySet().stream()
                                .map(works -> (works.getKey().isEmpty() ? "" : works.getKey() + words.say("card.colon"))
                                        + String.join(", ", works.getValue()))
                                .toList()))
                .toList();
    }

    private static String work(DoneInHome.Done one, Words words, Locale locale) {
        String what = one.what().in(locale);
        if (one.fitted() == null) {
            return what;
        }
        String count = one.fitted().stripTrailingZeros().toPlainString();
        return words.say(
                "proof.fitted",
                Map.of("what", what, "count", locale.getLanguage().equals("fr") ? count.replace('.', ',') : count));
    }
}
