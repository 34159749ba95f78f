package changeover.web.session;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.orders.NewOrder;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An order as a form says it: one of the business's parts, or one that it has not carried so far, which is then among its parts under
 * the maker's number.
 */
@ApplicationScoped
public class OrderTyped {

    private static final BigDecimal LEAST = new BigDecimal("0.0001");
    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    @Inject
    Parts parts;

    public NewOrder read(UUID visit, Typed typed) {
        String known = typed.line("part", 60);
        @Nullable String number = known == null ? typed.text("number", 60) : null;
        @Nullable String name = known == null ? typed.text("name", 120) : null;
        BigDecimal quantity = typed.number("quantity", LEAST, MOST);
        String supplier = Objects.requireNonNullElse(typed.line("supplier", 120), "");
        LocalDate expected = typed.day("expected");
        LocalDate ordered = typed.dayOrNone("ordered");
        UUID machine = typed.idOrNone("equipment");
        String words = typed.line("words", 500);
        typed.understood();
        String code = known != null ? known : kept(Objects.requireNonNull(number), Objects.requireNonNull(name));
        return new NewOrder(visit, machine, code, quantity, supplier, expected, words, ordered);
    }

    /** A part of another name is never renamed by an order. */
    private String kept(String number, String name) {
        KnownPart there = parts.find(number).orElse(null);
        if (there != null
                && !there.name().en().equals(name)
                && !there.name().fr().equals(name)) {
            throw Refusal.of("part-order.code-taken").at("number").thrown();
        }
        if (there == null) {
            try {
                parts.keep(new KnownPart(number, new Wording(name, name), "C62", null, null));
            } catch (Refused refused) {
                throw refused.first().at("number").thrown();
            }
        }
        return number;
    }
}
