package changeover.web.office;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A customer chosen among those that are known, or written as a new one, in one form. */
@ApplicationScoped
class ChosenCustomer {

    /** As many are offered to choose from. */
    private static final int FOUND = 12;

    @Inject
    Customers customers;

    /** Reads the form's words about them; nobody is written yet. Null for a new one. */
    @Nullable
    Customer read(Typed typed) {
        UUID key = typed.idOrNone("known");
        if (key == null) {
            typed.text("name", 200);
            return null;
        }
        return customers.get(key).orElseThrow(NotFoundException::new);
    }

    /** @param known what {@link #read} answered */
    UUID written(@Nullable Customer known, Typed typed) {
        if (known != null) {
            return known.id();
        }
        Customer.Facts facts = Customer.Facts.of(
                typed.text("name", 200),
                typed.oneOf("language", Set.of("en", "fr")),
                typed.line("phone", 40),
                typed.line("email", 200));
        typed.understood();
        return customers.add(facts).id();
    }

    /** Whom to choose from: those of the words that were asked for, else the one that was chosen. */
    List<Customer> found(Said form, String asked) {
        return asked.isEmpty()
                ? customers.get(idOf(form.value("known"))).stream().toList()
                : customers.find(asked, FOUND);
    }

    private static UUID idOf(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException notAnId) {
            return new UUID(0, 0);
        }
    }
}
