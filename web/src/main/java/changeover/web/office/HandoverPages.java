package changeover.web.office;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Handover;
import changeover.contracts.agreements.HomesHandedOver;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A home is sold, or somebody else moves in: who is what from that day, what becomes of the agreement, which keys go back. */
@Path("/{slug}/homes/{home}/handover")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HandoverPages {

    /** The agreement that may follow. */
    public record Deal(int number, String plan, String last) {}

    public record View(
            Home home, @Nullable Deal deal, List<HomesHandedOver.Past> past, List<AccessCodes.Listed> keys) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance handover(Frame frame, View view, Said form, String asked, List<Customer> found);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    HomesHandedOver handovers;

    @Inject
    AccessCodes codes;

    @Inject
    ChosenCustomer chosen;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance look(@PathParam("home") UUID home, @QueryParam("who") @DefaultValue("") String who) {
        var known = Map.of(
                "day",
                today.day().toString(),
                "kind",
                "sold",
                "agreement",
                "follows",
                "language",
                businesses.current().language());
        return page(home, Said.filled(known), who.strip());
    }

    @POST
    public Response handOver(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Home home = known(id);
                    var kind = Handover.Kind.ofCode(typed.oneOf("kind", Set.of("sold", "let")));
                    LocalDate day = typed.day("day");
                    boolean sold = kind == Handover.Kind.SOLD;
                    boolean running = typed.refusals().isEmpty()
                            && handovers.agreement(id, day).isPresent();
                    boolean follows = sold
                            && running
                            && typed.oneOf("agreement", Set.of("follows", "ends"))
                                    .equals("follows");
                    Customer customer = chosen.read(typed);
                    typed.understood();
                    UUID who = chosen.written(customer, typed);
                    Optional<Agreement> ends = handovers.agreement(id, day).filter(_ -> sold && !follows);
                    handovers.handOver(new Handover(home.id(), kind, who, day, follows));
                    return ends.map(deal ->
                                    "/" + slug + "/agreements/" + deal.id() + "/ending?cause=home-sold&day=" + day)
                            .orElse(SaidOnce.at("/" + slug + "/homes/" + id + "/handover", "kept"));
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale()), ""));
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, Said form, String asked) {
        Frame frame = frames.of(Tab.HOMES);
        Home home = known(id);
        Deal deal = handovers
                .agreement(id, today.day())
                .map(one -> new Deal(
                        one.number(),
                        one.planName().in(frame.locale()),
                        frame.inWords(one.term().last())))
                .orElse(null);
        return Pages.handover(
                frame, new View(home, deal, handovers.of(id), codes.list(id)), form, asked, chosen.found(form, asked));
    }
}
