package changeover.deploy.admin;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Role;
import changeover.deploy.Command;
import changeover.deploy.CommandRefused;
import changeover.web.session.SignIns;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Opens a business with its owner, who gets a password that serves once. */
@ApplicationScoped
public class BusinessAdd implements Command {
    private static final Pattern MAIL = Pattern.compile("[^@\\s]+@[^@\\s]+\\.[^@\\s]+|[^@\\s]+@localhost");
    private static final Set<String> KNOWN = Set.of(
            "--slug",
            "--name",
            "--address",
            "--region",
            "--language",
            "--owner",
            "--owner-name",
            "--gst",
            "--qst",
            "--licence",
            "--small-supplier",
            "--phone",
            "--email",
            "--data");

    @Inject
    SignIns signIns;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    CurrentTenant current;

    @Inject
    Doors doors;

    @Inject
    Clock clock;

    @Override
    public String words() {
        return "business add";
    }

    @Override
    @ActivateRequestContext
    public void run(List<String> rest) {
        Words words = new Words("business add", rest, Set.of("--small-supplier"));
        words.allow(KNOWN);
        NewBusiness facts = facts(words);
        String owner = words.needed("--owner", "the owner's mail address");
        if (!MAIL.matcher(owner).matches()) {
            throw new CommandRefused("--owner is a mail address, not " + owner + ".");
        }
        if (doors.tenant(facts.slug()).isPresent()) {
            throw new CommandRefused("The address " + facts.slug() + " is taken by another business.");
        }
        Optional<String> password =
                open(facts, owner, words.option("--owner-name").orElseGet(() -> name(owner)));
        System.out.println(
                "business slug=%s owner=%s password=%s".formatted(facts.slug(), owner, password.orElse("unchanged")));
    }

    private static NewBusiness facts(Words words) {
        String language = words.needed("--language", "en or fr").toLowerCase(Locale.ROOT);
        if (!Set.of("en", "fr").contains(language)) {
            throw new CommandRefused("--language is en or fr, not " + language + ".");
        }
        boolean numbers =
                words.option("--gst").isPresent() || words.option("--qst").isPresent();
        if (numbers && words.has("--small-supplier")) {
            throw new CommandRefused("A small supplier has no tax numbers: give --gst and --qst, or --small-supplier.");
        }
        return new NewBusiness(
                words.needed("--slug", "its name in the address"),
                words.needed("--name", "the business's name"),
                words.needed("--address", "its street, city and postal code"),
                Place.of(words.needed("--region", "country and region, such as CA-QC")),
                language,
                words.option("--phone").orElse(null),
                words.option("--email").orElse(null),
                words.option("--gst").orElse(null),
                words.option("--qst").orElse(null),
                words.option("--licence").orElse(null),
                words.has("--small-supplier"));
    }

    /** The sign-in first, because nothing remote is called inside a business's transaction; alone it opens no door. */
    private Optional<String> open(NewBusiness facts, String owner, String name) {
        SignIns.Invited invited = signIns.invite(owner, name, facts.language());
        LocalDate day = LocalDate.now(clock.withZone(facts.place().zone()));
        boolean nowhereYet = doors.ofPerson(invited.personId()).isEmpty();
        current.run(UUID.randomUUID(), CurrentTenant.NOBODY, () -> {
            businesses.open(facts, day);
            people.add(Membership.begin(invited.personId(), name, owner, facts.language(), Role.OWNER));
        });
        return invited.oneTimePassword()
                .or(() -> nowhereYet ? Optional.of(signIns.renew(invited.personId())) : Optional.empty());
    }

    /** What the address tells of the name, until the owner writes it: marie.roy@… is Marie Roy. */
    private static String name(String mail) {
        String local = mail.substring(0, mail.indexOf('@'));
        return Pattern.compile("[._-]+")
                .splitAsStream(local)
                .filter(word -> !word.isEmpty())
                .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
                .collect(Collectors.joining(" "));
    }
}
