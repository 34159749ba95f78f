package changeover.web.office;

import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.words.Refusal;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Invitations;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.SignIns;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;

/** Who works here: invited by the owner, with tickets, until a last day. */
@Path("/{slug}/shop/people")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class PeoplePages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance invite(Frame frame, Said form);

        static native TemplateInstance invited(Frame frame, String name, String email, String password);

        static native TemplateInstance person(Frame frame, Membership member, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    People people;

    @Inject
    SignIns signIns;

    @Inject
    Invitations invitations;

    @Inject
    Doors doors;

    @Inject
    CurrentTenant current;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance invite() {
        return Pages.invite(frames.of(Tab.SHOP), Said.blank());
    }

    /** The sign-in is made first, outside the transaction: without a membership it opens no door. */
    @POST
    @Produces(MediaType.TEXT_HTML)
    public Response invite(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String name = typed.text("name", 120);
        String email = typed.text("email", 200);
        String role = typed.oneOf("role", Set.of("owner", "office", "technician", "accountant"));
        String language = typed.oneOf("language", Set.of("en", "fr"));
        if (!Invitations.Invitation.isMail(email)) {
            typed.refuse(Refusal.of("people.mail").at("email"));
        }
        Function<List<Refusal>, TemplateInstance> again =
                refusals -> Pages.invite(frames.of(Tab.SHOP), Said.again(typed, refusals, frames.locale()));
        if (!typed.refusals().isEmpty()) {
            return desk.refuse(typed.refusals(), again);
        }
        var invitation = new Invitations.Invitation(name, email, Role.of(role), language);
        SignIns.Invited signIn = invitations.signIn(invitation);
        return desk.show(
                () -> {
                    var invited = invitations.add(invitation, signIn);
                    return shown(name, email, invited.oneTimePassword().orElse(""));
                },
                again);
    }

    /** Shown in the answer to the post itself and never again: the password is kept nowhere. */
    private TemplateInstance shown(String name, String email, String password) {
        return Pages.invited(frames.of(Tab.SHOP), name, email, password);
    }

    @GET
    @Path("{person}")
    @Transactional
    public TemplateInstance person(@PathParam("person") UUID person) {
        return Pages.person(frames.of(Tab.SHOP), member(person), Said.blank());
    }

    @POST
    @Path("{person}/tickets")
    public Response addTicket(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String kind = typed.oneOf("kind", TicketNeeded.KINDS);
        String number = typed.line("number", 60);
        var expires = typed.dayOrNone("expires");
        return desk.answer(
                () -> {
                    typed.understood();
                    member(person);
                    people.hold(person, kind, number, expires);
                    return SaidOnce.at("/" + slug + "/shop", "kept");
                },
                refusals -> Pages.person(
                        frames.of(Tab.SHOP), member(person), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("{person}/ending")
    public Response end(
            @PathParam("slug") String slug, @PathParam("person") UUID person, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var day = typed.day("day");
        return desk.answer(
                () -> {
                    typed.understood();
                    if (person.equals(current.person())) {
                        throw Refusal.of("people.not-yourself").at("day").thrown();
                    }
                    member(person).end(day);
                    return SaidOnce.at("/" + slug + "/shop", "kept");
                },
                refusals -> Pages.person(
                        frames.of(Tab.SHOP), member(person), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("{person}/password")
    public Response password(@PathParam("person") UUID person) {
        Membership member = current.run(current.id(), current.person(), () -> member(person));
        Function<List<Refusal>, TemplateInstance> again = refusals -> Pages.person(
                frames.of(Tab.SHOP),
                member,
                Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale()));
        if (doors.worksElsewhere(person, current.id())) {
            // One sign-in opens every business of a person: no single owner may change its password.
            return desk.refuse(List.of(Refusal.of("people.password-elsewhere", Map.of("name", member.name()))), again);
        }
        // Inside the deed, so that a form that comes twice does not put another password in the place of the one shown.
        return desk.show(() -> shown(member.name(), member.email(), signIns.renew(person)), again);
    }

    private Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }
}
