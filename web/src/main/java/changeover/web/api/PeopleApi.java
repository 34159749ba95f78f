package changeover.web.api;

import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.words.Refusal;
import changeover.web.session.Invitations;
import changeover.web.session.Invitations.Invitation;
import changeover.web.session.Once;
import changeover.web.session.SignIns;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Who works here, in which role, with which tickets. A technician sees themselves. */
@Path("/api/v1/{slug}/people")
@RolesAllowed({"owner", "office", "technician"})
public class PeopleApi {

    private static final Set<String> ROLES = Set.of("owner", "office", "technician", "accountant");
    private static final Set<String> LANGUAGES = Set.of("en", "fr");

    @Inject
    People people;

    @Inject
    Invitations invitations;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<PersonDocument> all() {
        Map<UUID, List<Ticket>> tickets = people.tickets().stream().collect(Collectors.groupingBy(Ticket::personId));
        return people.all().stream()
                .filter(member -> isSeen(member.personId()))
                .map(member -> PersonDocument.of(member, tickets.getOrDefault(member.personId(), List.of())))
                .toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        if (!isSeen(id)) {
            throw new NotFoundException();
        }
        Membership member = member(id);
        return Edition.of(document(member), member.version());
    }

    /**
     * Invites somebody: {@code name, email, role, language}. Whoever has a sign-in of their own is asked first and
     * answers {@code waiting}. A new sign-in's password is not said here, since answers are kept and a password is not:
     * the owner gives one on the person's page.
     */
    @POST
    @RolesAllowed("owner")
    public Response invite(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        var _ = Once.named(operation);
        Invitation invitation = invitation(Asked.of(body, json));
        SignIns.Invited signIn = invitations.signIn(invitation);
        return once.answer(operation, "people " + body, () -> {
            Membership member = invitations.add(invitation, signIn).member();
            return Once.Answer.made("/api/v1/" + slug + "/people/" + member.personId(), document(member));
        });
    }

    private static Invitation invitation(Asked asked) {
        String name = asked.text("name", 120);
        String email = asked.text("email", 200);
        String role = asked.oneOf("role", ROLES);
        String language = asked.oneOf("language", LANGUAGES);
        if (!email.isEmpty() && !Invitation.isMail(email)) {
            asked.refuse(Refusal.of("people.mail").at("email"));
        }
        asked.nothingElse().understood();
        return new Invitation(name, email, Role.of(role), language);
    }

    /** Writes a person anew on the edition that If-Match names: {@code name, language, role}, optionally {@code phone}. */
    @PUT
    @Path("{id}")
    @RolesAllowed("owner")
    public Response rewrite(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "people " + id + " " + ifMatch + body, () -> {
            Membership member = member(id);
            Edition.filledOn(ifMatch).mustBe(member.version());
            Asked asked = Asked.of(body, json);
            String name = asked.text("name", 120);
            String phone = asked.line("phone", 40);
            String language = asked.oneOf("language", LANGUAGES);
            String role = asked.oneOf("role", ROLES);
            if (id.equals(current.person()) && !role.equals(member.role().code())) {
                asked.refuse(Refusal.of("people.not-your-own-role").at("role"));
            }
            asked.nothingElse().understood();
            member.rewrite(name, member.email(), phone, language);
            member.become(Role.of(role));
            people.keep();
            return Once.Answer.done(document(member));
        });
    }

    /**
     * A ticket that the person holds: {@code kind} (refrigerant, gas, electrical), optionally {@code number, expires}. One of
     * a kind: a new card takes the old one's place.
     */
    @POST
    @Path("{id}/tickets")
    @RolesAllowed("owner")
    public Response addTicket(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "tickets " + id + body, () -> {
            Membership member = member(id);
            Asked asked = Asked.of(body, json);
            String kind = asked.oneOf("kind", TicketNeeded.KINDS);
            String number = asked.line("number", 60);
            LocalDate expires = asked.dayOrNone("expires");
            asked.nothingElse().understood();
            people.hold(id, kind, number, expires);
            return Once.Answer.done(document(member));
        });
    }

    /** The person's last day here: {@code day}. */
    @POST
    @Path("{id}/ending")
    @RolesAllowed("owner")
    public Response end(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "people ending " + id + body, () -> {
            Membership member = member(id);
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            if (id.equals(current.person())) {
                asked.refuse(Refusal.of("people.not-yourself").at("day"));
            }
            asked.nothingElse().understood();
            member.end(day);
            people.keep();
            return Once.Answer.done(document(member));
        });
    }

    private boolean isSeen(UUID person) {
        return !identity.hasRole("technician") || person.equals(current.person());
    }

    private Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }

    private PersonDocument document(Membership member) {
        return PersonDocument.of(member, people.ticketsOf(member.personId()));
    }
}
