package changeover.web.office;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is what to a home, from when until when: a payer, an occupant, who lets us in, who reads the report. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PartPages {

    private static final Set<String> PARTS =
            Arrays.stream(PartInHome.values()).map(PartInHome::code).collect(Collectors.toUnmodifiableSet());

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance parts(
                Frame frame,
                Home home,
                List<PeopleOfHomes.Played> parts,
                Said form,
                String asked,
                List<Customer> found);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    ChosenCustomer chosen;

    @Inject
    PeopleOfHomes people;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Path("{home}/people")
    @Transactional
    public TemplateInstance people(
            @PathParam("home") UUID id,
            @QueryParam("who") @DefaultValue("") String who,
            @QueryParam("customer") @Nullable UUID customer) {
        return page(
                id,
                Said.filled(Map.of(
                        "from",
                        today.day().toString(),
                        "language",
                        businesses.current().language(),
                        "known",
                        customer == null ? "" : customer.toString())),
                who.strip());
    }

    /** A customer known by key, or a new one, takes one or more parts from a day. */
    @POST
    @Path("{home}/people")
    public Response begin(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Home home = known(id);
                    List<String> wanted = typed.each("part");
                    if (wanted.isEmpty() || !PARTS.containsAll(wanted)) {
                        typed.refuse(Refusal.of("typed.choose").at("part"));
                    }
                    LocalDate from = typed.day("from");
                    String order = typed.line("purchaseOrder", 60);
                    Customer customer = chosen.read(typed);
                    typed.understood();
                    UUID who = chosen.written(customer, typed);
                    for (String part : wanted) {
                        parts.begin(home.id(), who, PartInHome.of(part), from, order);
                    }
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale()), ""));
    }

    @POST
    @Path("{home}/people/{part}/ending")
    public Response end(
            @PathParam("slug") String slug,
            @PathParam("home") UUID id,
            @PathParam("part") UUID part,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        LocalDate last = typed.day("last");
        return desk.answer(
                () -> {
                    known(id);
                    if (parts.of(id).stream().noneMatch(one -> one.id().equals(part))) {
                        throw new NotFoundException();
                    }
                    typed.understood();
                    parts.end(part, last.plusDays(1));
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale()), ""));
    }

    private TemplateInstance page(UUID id, Said form, String asked) {
        Home home = known(id);
        List<Customer> found = chosen.found(form, asked);
        return Pages.parts(frames.of(Tab.HOMES), home, people.ever(id, today.day()), form, asked, found);
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }

    private static String path(String slug, UUID id) {
        return "/" + slug + "/homes/" + id + "/people";
    }
}
