package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Somebody the business works for: a person or a company that signs, pays, lives in a home, lets us in or reads the
 * report. One payer may have many homes, billed together or each.
 */
@Entity
@Table(name = "customer")
public class Customer extends Owned {

    /** One invoice for all homes of a payer, or one for each home. */
    public static final List<String> INVOICES = List.of("one", "each");

    @Column(updatable = false)
    private String key = "";

    private String name = "";
    private String language = "en";
    private @Nullable String phone;
    private @Nullable String email;
    private @Nullable String street;
    private @Nullable String city;
    private @Nullable String region;
    private @Nullable String postal;
    private @Nullable String country;
    private String invoices = "one";

    @Column(name = "purchase_order")
    private @Nullable String purchaseOrder;

    @Column(name = "buyer_reference")
    private @Nullable String buyerReference;

    @Column(name = "tax_number")
    private @Nullable String taxNumber;

    private @Nullable String notes;

    @Version
    private int version;

    /**
     * What is known of a customer; the address is where the invoice goes, missing when that is the home itself.
     *
     * @param language en or fr: every paper for this customer is in it
     * @param invoices one or each
     * @param buyerReference what the payer wants to read on every invoice, to route it in their own house
     * @param taxNumber the payer's own, where they account for a tax themselves
     */
    public record Facts(
            String name,
            String language,
            @Nullable String phone,
            @Nullable String email,
            @Nullable String street,
            @Nullable String city,
            @Nullable String region,
            @Nullable String postal,
            @Nullable String country,
            String invoices,
            @Nullable String purchaseOrder,
            @Nullable String buyerReference,
            @Nullable String taxNumber,
            @Nullable String notes) {

        /** A customer with a name and a language, billed at the home. */
        public static Facts of(String name, String language, @Nullable String phone, @Nullable String email) {
            return new Facts(name, language, phone, email, null, null, null, null, null, "one", null, null, null, null);
        }
    }

    static Customer write(String key, Facts facts) {
        var customer = new Customer();
        customer.key = key;
        customer.say(facts);
        return customer;
    }

    /** Writes the customer's facts anew. Refused when somebody else did so since the form was filled. */
    public void rewrite(Facts facts, FilledOn form) {
        form.mustBe(version);
        say(facts);
    }

    private void say(Facts facts) {
        var checks = new Checks();
        name = checks.line("name", facts.name());
        language = checks.oneOf("language", facts.language(), List.of("en", "fr"));
        phone = checks.phone("phone", facts.phone());
        email = checks.mail("email", facts.email());
        street = checks.note("street", facts.street());
        city = checks.optionalLine("city", facts.city());
        region = checks.optionalLine("region", facts.region());
        postal = checks.optionalLine("postal", facts.postal());
        country = checks.optionalLine("country", facts.country());
        checks.refuseIf(country != null && !Country.isCode(country), "country", "country.shape");
        invoices = checks.oneOf("invoices", facts.invoices(), INVOICES);
        purchaseOrder = checks.optionalLine("purchaseOrder", facts.purchaseOrder());
        buyerReference = checks.optionalLine("buyerReference", facts.buyerReference());
        taxNumber = checks.optionalLine("taxNumber", facts.taxNumber());
        notes = checks.note("notes", facts.notes());
        checks.orRefuse();
    }

    public Facts facts() {
        return new Facts(
                name,
                language,
                phone,
                email,
                street,
                city,
                region,
                postal,
                country,
                invoices,
                purchaseOrder,
                buyerReference,
                taxNumber,
                notes);
    }

    /** The customer's key in the homes file. */
    public String key() {
        return key;
    }

    public String name() {
        return name;
    }

    public String language() {
        return language;
    }

    public Optional<String> phone() {
        return Optional.ofNullable(phone);
    }

    public Optional<String> email() {
        return Optional.ofNullable(email);
    }

    public int version() {
        return version;
    }
}
