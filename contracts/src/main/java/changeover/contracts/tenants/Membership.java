package changeover.contracts.tenants;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A person works in a business, in one role, until a day. The person is the sign-in's subject. */
@Entity
@Table(name = "membership")
public class Membership extends Owned {

    @Column(name = "person_id", updatable = false)
    private UUID personId = new UUID(0, 0);

    private String name = "";
    private String email = "";
    private @Nullable String phone;
    private String language = "en";
    private String role = "";

    @Column(name = "until_day")
    private @Nullable LocalDate untilDay;

    @Column(name = "asked_on")
    private @Nullable LocalDate askedOn;

    @Column(name = "joined_on")
    private @Nullable LocalDate joinedOn;

    @Column(name = "declined_on")
    private @Nullable LocalDate declinedOn;

    @Version
    private int version;

    /** Somebody whose sign-in was made for them: they work here at once. */
    public static Membership begin(UUID personId, String name, String email, String language, Role role) {
        var membership = new Membership();
        membership.personId = personId;
        membership.rewrite(name, email, null, language);
        membership.role = role.code();
        return membership;
    }

    /** Somebody with a sign-in of their own is asked: they work here once they have said yes. */
    public static Membership ask(UUID personId, String name, String email, String language, Role role, LocalDate day) {
        var membership = begin(personId, name, email, language, role);
        membership.askedOn = day;
        return membership;
    }

    /** The person's own yes; a second one changes nothing. */
    public void join(LocalDate day) {
        if (isAsked()) {
            joinedOn = day;
            declinedOn = null;
        }
    }

    /** The person's own no: nothing here opens to them, and the question stands no longer at their doors. */
    public void decline(LocalDate day) {
        if (isAsked()) {
            declinedOn = day;
        }
    }

    /** Somebody who said no is asked once more, as if for the first time. */
    void askAgain(Membership anew) {
        rewrite(anew.name, anew.email, null, anew.language);
        role = anew.role;
        askedOn = anew.askedOn;
        declinedOn = null;
        untilDay = null;
    }

    public void rewrite(String newName, String newEmail, @Nullable String newPhone, String newLanguage) {
        name = newName;
        email = newEmail;
        phone = newPhone;
        language = newLanguage;
    }

    public void become(Role newRole) {
        role = newRole.code();
    }

    /** The person's last day here; their past stays theirs. */
    public void end(LocalDate lastDay) {
        untilDay = lastDay;
    }

    public UUID personId() {
        return personId;
    }

    public String name() {
        return name;
    }

    public String email() {
        return email;
    }

    public Optional<String> phone() {
        return Optional.ofNullable(phone);
    }

    public String language() {
        return language;
    }

    public Role role() {
        return Role.of(role);
    }

    public Optional<LocalDate> untilDay() {
        return Optional.ofNullable(untilDay);
    }

    /** Whether they work here on the day: they have said yes where they were asked, and have not left before it. */
    public boolean worksOn(LocalDate day) {
        return !isAsked() && (untilDay == null || !day.isAfter(untilDay));
    }

    /** Whether their yes is still waited for. */
    public boolean isAsked() {
        return askedOn != null && joinedOn == null;
    }

    public Optional<LocalDate> askedOn() {
        return Optional.ofNullable(askedOn);
    }

    public Optional<LocalDate> declinedOn() {
        return Optional.ofNullable(declinedOn);
    }

    public Optional<LocalDate> joinedOn() {
        return Optional.ofNullable(joinedOn);
    }

    public int version() {
        return version;
    }
}
