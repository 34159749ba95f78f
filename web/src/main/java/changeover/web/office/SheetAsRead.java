package changeover.web.office;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.oldsheet.OldHome;
import changeover.contracts.oldsheet.SheetField;
import changeover.contracts.oldsheet.SheetLook;
import changeover.web.session.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A few lines of an old spreadsheet as they will stand here, one fact beside the other. */
final class SheetAsRead {

    private SheetAsRead() {}

    static List<OldSheetView.AsRead> of(
            List<OldHome> homes, SheetLook.Ground ground, Frame frame, OldSheetWords words) {
        Locale locale = frame.locale();
        return Stream.of(
                        fact(SheetField.NAME, homes, locale, home -> home.who().name()),
                        fact(SheetField.PHONE, homes, locale, home -> home.who().phone()),
                        fact(SheetField.EMAIL, homes, locale, home -> home.who().email()),
                        fact(
                                SheetField.LANGUAGE,
                                homes,
                                locale,
                                home -> home.who().language().equals("fr") ? words.french() : words.english()),
                        fact(
                                SheetField.STREET,
                                homes,
                                locale,
                                home -> home.where().street()),
                        fact(
                                SheetField.UNIT_LABEL,
                                homes,
                                locale,
                                home -> home.where().unitLabel()),
                        fact(
                                SheetField.CITY,
                                homes,
                                locale,
                                home -> home.where().city()),
                        fact(
                                SheetField.REGION,
                                homes,
                                locale,
                                home -> home.where().region()),
                        fact(
                                SheetField.POSTAL,
                                homes,
                                locale,
                                home -> home.where().postal()),
                        line(words.machines(), homes, home -> machines(home, ground, frame, words)),
                        fact(
                                SheetField.PLAN,
                                homes,
                                locale,
                                home -> deal(home, deal -> planName(deal, ground, locale))),
                        fact(
                                SheetField.FIRST_DAY,
                                homes,
                                locale,
                                home -> deal(home, deal -> frame.inWords(deal.from()))),
                        fact(
                                SheetField.PRICE,
                                homes,
                                locale,
                                home -> deal(home, deal -> deal.price().format(locale))),
                        fact(
                                SheetField.PAID,
                                homes,
                                locale,
                                home -> deal(
                                        home,
                                        deal -> deal.paid() == null
                                                ? null
                                                : deal.paid().format(locale))),
                        fact(
                                SheetField.LAST_VISIT,
                                homes,
                                locale,
                                home -> deal(
                                        home,
                                        deal -> deal.lastVisit() == null ? null : frame.inWords(deal.lastVisit()))),
                        fact(SheetField.OWED, homes, locale, home -> owed(home, locale)),
                        fact(SheetField.NOTE, homes, locale, home -> home.who().note()))
                .filter(line -> line.cells().stream().anyMatch(cell -> !cell.isEmpty()))
                .toList();
    }

    private static OldSheetView.AsRead fact(
            SheetField field, List<OldHome> homes, Locale locale, Function<OldHome, @Nullable String> said) {
        return line(field.wording().in(locale), homes, said);
    }

    private static OldSheetView.AsRead line(
            String what, List<OldHome> homes, Function<OldHome, @Nullable String> said) {
        List<String> cells = new ArrayList<>();
        for (OldHome home : homes) {
            String cell = said.apply(home);
            cells.add(cell == null ? "" : cell);
        }
        return new OldSheetView.AsRead(what, cells);
    }

    private static @Nullable String deal(OldHome home, Function<OldHome.Deal, @Nullable String> said) {
        OldHome.Deal agreed = home.agreement();
        return agreed == null ? null : said.apply(agreed);
    }

    private static @Nullable String owed(OldHome home, Locale locale) {
        OldHome.Owed owed = home.owed();
        return owed == null ? null : owed.amount().format(locale);
    }

    private static String planName(OldHome.Deal deal, SheetLook.Ground ground, Locale locale) {
        return ground.plans().stream()
                .filter(plan -> plan.code().equals(deal.plan()))
                .map(plan -> plan.name().in(locale))
                .findFirst()
                .orElse(deal.plan());
    }

    private static String machines(OldHome home, SheetLook.Ground ground, Frame frame, OldSheetWords words) {
        Stream<String> units = home.units().stream()
                .map(unit -> Stream.of(
                                ground.catalogue()
                                        .findKind(unit.kind())
                                        .map(Kind::wording)
                                        .map(kind -> kind.in(frame.locale()))
                                        .orElse(unit.kind()),
                                unit.make(),
                                unit.model(),
                                unit.serial(),
                                unit.installed() == null ? null : frame.inWords(unit.installed()))
                        .filter(fact -> fact != null)
                        .collect(Collectors.joining(" ")));
        return Stream.concat(units, home.toBeRead() ? Stream.of(words.read_first()) : Stream.empty())
                .collect(Collectors.joining("; "));
    }
}
