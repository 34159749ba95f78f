package changeover.web.office;

import changeover.billing.pricing.Charge;
import changeover.billing.pricing.Charges;
import changeover.billing.pricing.ClosedVisit;
import changeover.billing.pricing.Coverage;
import changeover.billing.pricing.OutsideHours;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.TravelZones;
import changeover.billing.pricing.VisitKind;
import changeover.billing.pricing.ZoneOfHome;
import changeover.billing.pricing.Zones;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.office.PriceNames.Choice;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What one visit without a plan would cost on two days, before tax: by the very rule that charges visits. */
@Path("/{slug}/shop/prices/example")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ExamplePages {

    private static final int LONGEST = 1_440;

    public record Line(String words, String why, String quantity, String net, boolean priced) {}

    /** @param waits whether something has no price on that day */
    public record OnDay(String day, List<Line> lines, String sum, boolean waits) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance example(Frame frame, List<OnDay> days, List<Choice> parts, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Prices prices;

    @Inject
    Zones zones;

    @Inject
    Parts parts;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page(@Context UriInfo address) {
        Frame frame = frames.of(Tab.SHOP);
        MultivaluedMap<String, String> asked = address.getQueryParameters();
        PriceBook book = prices.book();
        var typed = new Typed(asked.containsKey("minutes") ? asked : usual(book));
        List<LocalDate> days =
                Stream.of(typed.day("day"), typed.day("other")).distinct().toList();
        int minutes = typed.whole("minutes", 0, LONGEST);
        int outside = typed.whole("outside", 0, LONGEST);
        BigDecimal quantity = typed.number("quantity", BigDecimal.ZERO, BigDecimal.valueOf(1_000));
        String postal = typed.line("postal", 20);
        String kind = typed.oneOf("kind", Set.of("call", "extra"));
        List<KnownPart> known = parts.all();
        String part = typed.line("part", 60);
        List<OnDay> answers = typed.refusals().isEmpty()
                ? days.stream()
                        .map(day -> onDay(
                                frame,
                                book,
                                new ClosedVisit(
                                        day,
                                        VisitKind.of(kind),
                                        0,
                                        minutes,
                                        OutsideHours.night(Math.min(outside, minutes)),
                                        used(known, part, quantity),
                                        zone(day, postal == null ? "" : postal))))
                        .toList()
                : List.of();
        return Pages.example(
                frame,
                answers,
                known.stream()
                        .map(one -> new Choice(one.code(), one.name().in(frame.locale()) + " (" + one.code() + ")"))
                        .toList(),
                Said.again(typed, typed.refusals(), frame.locale()));
    }

    /** A call of an hour today, and on the next day that the book changes, else the first of January. */
    private MultivaluedMap<String, String> usual(PriceBook book) {
        LocalDate next = book.changesAfter(today.day()).stream()
                .findFirst()
                .orElse(today.day().plusYears(1).withDayOfYear(1));
        var fields = new MultivaluedHashMap<String, String>();
        Map.of(
                        "kind", "call",
                        "minutes", "60",
                        "outside", "0",
                        "quantity", "1",
                        "day", today.day().toString(),
                        "other", next.toString())
                .forEach(fields::putSingle);
        return fields;
    }

    private static List<ClosedVisit.UsedPart> used(List<KnownPart> known, @Nullable String code, BigDecimal quantity) {
        return known.stream()
                .filter(part -> part.code().equals(code) && quantity.signum() > 0)
                .map(part -> new ClosedVisit.UsedPart(
                        part.code(),
                        part.kind() == null ? part.code() : part.kind(),
                        part.name(),
                        quantity,
                        part.unit(),
                        false))
                .toList();
    }

    private @Nullable ZoneOfHome zone(LocalDate day, String postal) {
        TravelZones all = zones.all();
        return all.of(day, postal, null).orElse(null);
    }

    private OnDay onDay(Frame frame, PriceBook book, ClosedVisit visit) {
        Currency currency = businesses.current().currency();
        List<Charge> charges = Charges.of(visit, Coverage.NONE, book, currency);
        return new OnDay(
                frame.inWords(visit.day()),
                charges.stream().map(charge -> line(charge, frame)).collect(Collectors.toList()),
                Money.sum(charges.stream().map(Charge::net).toList(), currency).format(frame.locale()),
                charges.stream().anyMatch(charge -> charge.unitPrice() == null));
    }

    private static Line line(Charge charge, Frame frame) {
        String quantity = charge.quantity().stripTrailingZeros().toPlainString();
        Money price = charge.unitPrice();
        return new Line(
                charge.words().in(frame.locale()),
                charge.why().in(frame.locale()),
                (frame.locale().getLanguage().equals("fr") ? quantity.replace('.', ',') : quantity)
                        + (price == null ? "" : " × " + price.format(frame.locale())),
                price == null
                        ? new Wording("no price", "aucun prix").in(frame.locale())
                        : charge.net().format(frame.locale()),
                price != null);
    }
}
