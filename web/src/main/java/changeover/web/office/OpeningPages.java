package changeover.web.office;

import changeover.billing.openings.OpeningBalances;
import changeover.billing.openings.Prepaid;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What customers owed or had prepaid when the shop was taken over: listed by age, entered by hand for one customer. */
@Path("/{slug}/money/openings")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OpeningPages {

    public record Row(UUID id, String since, UUID customerId, String customer, String words, String amount) {}

    /** What was prepaid; its payment is undone where payments are. */
    public record Ahead(UUID payment, String day, UUID customerId, String customer, String words, String amount) {}

    /** Whose debt is entered; none shows the list alone. */
    public record Whose(UUID id, String name) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance openings(
                Frame frame, List<Row> rows, String total, List<Ahead> ahead, @Nullable Whose whose, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OpeningBalances openings;

    @Inject
    Prepaid prepaid;

    @Inject
    Customers customers;

    @Inject
    TakeOver takeOver;

    @Inject
    Businesses businesses;

    /** @param customer whose debt is to be entered */
    @GET
    @Transactional
    public TemplateInstance page(@QueryParam("customer") @Nullable String customer) {
        LocalDate day = takeOver.dayOrToday();
        return page(whose(customer), Said.filled(Map.of("since", day.toString(), "kind", "owed")));
    }

    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID customer = Optional.ofNullable(whose(fields.getFirst("customer")))
                            .map(Whose::id)
                            .orElseThrow(NotFoundException::new);
                    Currency currency = businesses.current().currency();
                    Money amount = typed.money("amount", currency);
                    boolean ahead = typed.line("kind", 20) != null
                            && typed.oneOf("kind", Set.of("owed", "prepaid")).equals("prepaid");
                    LocalDate since = ahead ? takeOver.dayOrToday() : typed.day("since");
                    String words = typed.text("words", 200);
                    typed.understood();
                    if (ahead) {
                        prepaid.keep(new Prepaid.Ahead(customer, amount, words));
                    } else {
                        openings.add(List.of(new OpeningBalances.Opening(customer, since, amount, words)));
                    }
                    return SaidOnce.at("/" + slug + "/money/openings", "kept");
                },
                refusals -> page(whose(fields.getFirst("customer")), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("{opening}/removal")
    public Response remove(@PathParam("slug") String slug, @PathParam("opening") UUID opening) {
        return desk.answer(
                () -> {
                    if (!openings.remove(opening)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/money/openings", "kept");
                },
                refusals -> page(null, Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale())));
    }

    private @Nullable Whose whose(@Nullable String customer) {
        try {
            return Optional.ofNullable(customer)
                    .map(UUID::fromString)
                    .flatMap(customers::get)
                    .map(one -> new Whose(one.id(), one.name()))
                    .orElse(null);
        } catch (IllegalArgumentException nobody) {
            return null;
        }
    }

    private TemplateInstance page(@Nullable Whose whose, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<OpeningBalances.Kept> all = openings.all();
        return Pages.openings(
                frame,
                all.stream().map(kept -> row(kept, frame)).toList(),
                Money.sum(
                                all.stream()
                                        .map(kept -> kept.opening().amount())
                                        .toList(),
                                businesses.current().currency())
                        .format(frame.locale()),
                prepaid.all().stream().map(kept -> ahead(kept, frame)).toList(),
                whose,
                form);
    }

    private static Ahead ahead(Prepaid.Kept kept, Frame frame) {
        return new Ahead(
                kept.payment(),
                frame.brief(kept.day()),
                kept.ahead().customerId(),
                kept.customer(),
                kept.ahead().words(),
                kept.ahead().amount().format(frame.locale()));
    }

    private static Row row(OpeningBalances.Kept kept, Frame frame) {
        return new Row(
                kept.id(),
                frame.brief(kept.opening().since()),
                kept.opening().customerId(),
                kept.customer(),
                kept.opening().words(),
                kept.opening().amount().format(frame.locale()));
    }
}
