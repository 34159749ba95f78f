package changeover.web.session;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;

/**
 * The owner invites somebody to work here. Whoever has no sign-in yet is given one and works here at once; whoever has
 * one of their own is asked, and works here when they have said yes at their doors.
 */
@ApplicationScoped
public class Invitations {

    /** Who is invited, in which role, and the language that the pages speak to them. */
    public record Invitation(String name, String email, Role role, String language) {

        public static boolean isMail(String email) {
            return email.matches("[^@\\s]+@[^@\\s]+\\.[^@\\s]+");
        }
    }

    /** @param oneTimePassword of a sign-in made now; shown once, kept nowhere */
    public record Invited(Membership member, Optional<String> oneTimePassword) {}

    @Inject
    SignIns signIns;

    @Inject
    People people;

    @Inject
    Today today;

    /** Before any transaction: a sign-in without a membership opens no door. */
    public SignIns.Invited signIn(Invitation invitation) {
        return signIns.invite(invitation.email(), invitation.name(), invitation.language());
    }

    /** Inside the business's transaction. Refused for somebody who belongs to the business already. */
    public Invited add(Invitation said, SignIns.Invited signIn) {
        boolean theirOwn = signIn.oneTimePassword().isEmpty();
        Membership member = theirOwn
                ? people.ask(Membership.ask(
                        signIn.personId(), said.name(), said.email(), said.language(), said.role(), today.day()))
                : people.add(
                        Membership.begin(signIn.personId(), said.name(), said.email(), said.language(), said.role()));
        return new Invited(member, signIn.oneTimePassword());
    }
}
