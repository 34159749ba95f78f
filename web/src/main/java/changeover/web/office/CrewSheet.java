package changeover.web.office;

import changeover.contracts.calendar.HolidayChoice;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Ticket;
import changeover.scheduling.dayplan.ChosenHolidays;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import changeover.scheduling.dayplan.change.DaysAway;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A technician on one page: hours, days off, tickets, where the day begins, the van, and the holidays that count. */
@ApplicationScoped
class CrewSheet {

    private static final int AHEAD_YEARS = 2;

    /** A weekday with the names of its two fields. */
    public record Weekday(String words, String starts, String ends) {}

    /** @param expires the last day in words, empty where it has none */
    public record Card(String kind, String number, String expires, boolean over, boolean soon) {}

    public record Free(String day, String name) {}

    /**
     * @param usual whether the usual hours hold, since none were written
     * @param seen the hours as they stand, which a form must name to change them
     * @param booked days off on which they have visits all the same
     * @param baseVersion the edition of where the day begins; -1 while nothing is written
     * @param van the name of their van; empty while there is none
     */
    public record View(
            UUID person,
            String name,
            boolean technician,
            boolean usual,
            String seen,
            List<Weekday> week,
            List<DaysOffInWords.Off> off,
            List<DaysOffInWords.Booked> booked,
            List<Card> cards,
            int baseVersion,
            String van,
            List<Free> holidays) {}

    /** The four forms of the page, each blank, filled or as it was typed. */
    record Forms(Said hours, Said off, Said base, Said card) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance roster(Frame frame, View view, Said hours, Said off, Said base, Said card);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    @Inject
    Rosters rosters;

    @Inject
    DaysAway away;

    @Inject
    ChosenHolidays holidays;

    @Inject
    TechnicianBases bases;

    @Inject
    StockPlaces stock;

    Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }

    /** The forms as they stand in the books. */
    Forms written(UUID person) {
        return new Forms(hours(person), Said.blank(), base(person), Said.blank());
    }

    String seen(UUID person) {
        return rosters.hoursOf(person).stream()
                .map(one -> one.weekday().getValue() + " " + one.starts() + "-" + one.ends())
                .collect(Collectors.joining(", "));
    }

    private Said hours(UUID person) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Roster.Hours one : rosters.hoursOf(person)) {
            fields.put("starts-" + one.weekday().getValue(), one.starts().toString());
            fields.put("ends-" + one.weekday().getValue(), one.ends().toString());
        }
        return Said.filled(fields);
    }

    private Said base(UUID person) {
        return bases.of(person)
                .map(TechnicianBase::facts)
                .map(facts -> Said.filled(Map.of(
                        "address", facts.address(),
                        "latitude", MarkUpsInWords.plain(facts.latitude()),
                        "longitude", MarkUpsInWords.plain(facts.longitude()),
                        "lunch", String.valueOf(facts.lunchMinutes()))))
                .orElseGet(() -> Said.filled(Map.of("lunch", String.valueOf(TechnicianBases.USUAL_LUNCH))));
    }

    TemplateInstance page(UUID person, Forms forms) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.roster(frame, view(person, frame), forms.hours(), forms.off(), forms.base(), forms.card());
    }

    private View view(UUID person, Frame frame) {
        Membership member = member(person);
        var coming = new Window(frame.today(), frame.today().plusYears(AHEAD_YEARS));
        return new View(
                person,
                member.name(),
                member.role() == Role.TECHNICIAN,
                !rosters.hasOwn(person),
                seen(person),
                Stream.of(DayOfWeek.values())
                        .map(day -> weekday(day, frame.locale()))
                        .toList(),
                DaysOffInWords.runs(
                        rosters.daysOff(coming).stream()
                                .filter(day ->
                                        day.personId().map(person::equals).orElse(true))
                                .toList(),
                        frame),
                DaysOffInWords.booked(away.booked(person, frame.today()), frame),
                people.ticketsOf(person).stream()
                        .map(ticket -> card(ticket, frame))
                        .toList(),
                bases.of(person).map(TechnicianBase::version).orElse(-1),
                stock.vanOf(person).map(StockPlace::name).orElse(""),
                holidays(frame));
    }

    private static Card card(Ticket ticket, Frame frame) {
        return new Card(
                ticket.kind(),
                ticket.number().orElse(""),
                ticket.expiresOn().map(frame::inWords).orElse(""),
                !ticket.holdsOn(frame.today()),
                ticket.runsOut(frame.today()));
    }

    /** The holidays of the place in the twelve months to come. */
    private List<Free> holidays(Frame frame) {
        Business business = businesses.current();
        HolidayChoice chosen = holidays.choice();
        LocalDate today = frame.today();
        return Stream.of(today.getYear(), today.getYear() + 1)
                .flatMap(year -> Holidays.in(business.place(), year, chosen).stream())
                .filter(holiday -> new Window(today, today.plusYears(1)).contains(holiday.day()))
                .map(holiday -> new Free(frame.inWords(holiday.day()), holiday.name(frame.locale())))
                .toList();
    }

    private static Weekday weekday(DayOfWeek day, Locale locale) {
        String words = day.getDisplayName(TextStyle.FULL, locale);
        return new Weekday(
                words.substring(0, 1).toUpperCase(locale) + words.substring(1),
                "starts-" + day.getValue(),
                "ends-" + day.getValue());
    }
}
