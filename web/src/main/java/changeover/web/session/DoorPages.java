package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Door;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** The pages before any shop: which business, what one had written, and the way out. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class DoorPages {

    /** What a page says in its form, and no person. */
    private static final Set<String> NOT_WRITTEN = Set.of("version", SentForm.ONCE);

    @CheckedTemplate(basePath = "session")
    static class Pages {
        static native TemplateInstance businesses(List<Door> doors, List<Door> asking, String language);

        static native TemplateInstance again(
                String action, List<KeptForm.Field> fields, List<KeptForm.Field> shown, String language);

        static native TemplateInstance out(String language);

        private Pages() {}
    }

    @Inject
    Doors doors;

    @Inject
    KeptForms forms;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @Inject
    People people;

    @Inject
    Today today;

    @Inject
    RoutingContext context;

    /** One business: straight in. Several: the list of doors. */
    @GET
    @Authenticated
    public Object businesses() {
        List<Door> mine = doors.ofPerson(me());
        List<Door> asking = doors.asking(me());
        return mine.size() == 1 && asking.isEmpty()
                ? Desk.goTo(firstPage(mine.getFirst()))
                : Pages.businesses(mine, asking, language());
    }

    /** The person says yes to a business that asked whether they work there, and its door is theirs; or no. */
    @POST
    @Authenticated
    public Response reply(@FormParam("business") String slug, @FormParam("answer") String answer) {
        if (!"yes".equals(answer) && !"no".equals(answer)) {
            throw new NotFoundException();
        }
        Door door = doors.asking(me()).stream()
                .filter(one -> one.slug().equals(slug))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        boolean yes = answer.equals("yes");
        current.run(door.tenantId(), me(), () -> {
            Membership mine = people.of(me()).orElseThrow(NotFoundException::new);
            if (yes) {
                mine.join(today.day());
            } else {
                mine.decline(today.day());
            }
        });
        return Desk.goTo(yes ? firstPage(door) : "/");
    }

    private UUID me() {
        return UUID.fromString(identity.getPrincipal().getName());
    }

    @GET
    @Path("{slug}")
    @RolesAllowed({"owner", "office", "technician"})
    public Response in(@PathParam("slug") String slug) {
        Door door = identity.getAttribute(AtTheDoor.DOOR);
        return Desk.goTo(firstPage(door));
    }

    @GET
    @Path("{slug}/again/{id}")
    @RolesAllowed({"owner", "office", "technician"})
    public TemplateInstance again(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        UUID person = identity.getAttribute(AtTheDoor.PERSON);
        KeptForm form = forms.take(id, slug, person).orElseThrow(NotFoundException::new);
        List<KeptForm.Field> shown = form.withoutToken().stream()
                .filter(field -> !field.value().isBlank() && !NOT_WRITTEN.contains(field.name()))
                .toList();
        return Pages.again(form.action(), form.withoutToken(), shown, language());
    }

    @GET
    @Path("signed-out")
    @PermitAll
    public TemplateInstance out() {
        return Pages.out(language());
    }

    private static String firstPage(Door door) {
        return "/" + door.slug()
                + switch (door.role()) {
                    case OWNER, OFFICE -> "/today";
                    case TECHNICIAN -> "/field";
                    case ACCOUNTANT -> "/money";
                };
    }

    private String language() {
        return Mishaps.locale(context).getLanguage().equals("fr") ? "fr-CA" : "en";
    }
}
