package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;

/** What a person chooses for themselves: the language of the pages. */
@Path("/{slug}/language")
@RolesAllowed({"owner", "office", "technician", "accountant"})
class MyPages {

    @Inject
    People people;

    @Inject
    CurrentTenant current;

    @POST
    @Transactional
    public Response speak(
            @PathParam("slug") String slug, @FormParam("language") String language, @FormParam("back") String back) {
        people.of(current.person()).ifPresent(me -> rewrite(me, language));
        boolean ours = back != null && back.startsWith("/" + slug + "/") && !back.contains("//");
        return Desk.goTo(ours ? back : "/" + slug);
    }

    private static void rewrite(Membership me, String language) {
        me.rewrite(
                me.name(),
                me.email(),
                me.phone().orElse(null),
                "fr-CA".equals(language) || "fr".equals(language) ? "fr" : "en");
    }
}
