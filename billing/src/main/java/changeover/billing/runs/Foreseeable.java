package changeover.billing.runs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft as somebody looks at it before a run: who pays, for what, and what is odd about it.
 *
 * @param mail whether the payer has an e-mail address
 * @param street of the work, empty where it is of several homes
 * @param what its first line says
 * @param more lines after the first
 */
public record Foreseeable(
        UUID id,
        UUID customerId,
        String customer,
        boolean mail,
        Kind kind,
        String street,
        LocalDate day,
        Wording what,
        int more,
        List<Oddity> odd) {

    /** What it asks money for. */
    public enum Kind {
        PLAN,
        VISIT,
        FEE,
        DEPOSIT,
        CREDIT;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> of(String code) {
            return List.of(values()).stream()
                    .filter(kind -> kind.code().equals(code))
                    .findFirst();
        }
    }

    /** Why somebody should look. */
    public enum Why {
        /** Far above what this customer's visits cost usually. */
        ABOVE_CUSTOMER,
        /** Far above what the documents of the plan ask usually. */
        ABOVE_PLAN,
        /** The home has another document for a visit of the same day. */
        TWICE_A_DAY,
        /** Something is to be paid, and costs nothing. */
        AT_NOUGHT;

        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** @param usual before tax; null where no amount is compared */
    public record Oddity(Why why, @Nullable Money usual) {}

    /** So many earlier documents must say what is usual. */
    static final int EARLIER = 3;

    /** So many times the usual amount is far above it. */
    private static final int FAR = 3;

    public Foreseeable {
        odd = List.copyOf(odd);
    }

    /** What is odd about a draft that asks so much before tax. */
    static List<Oddity> odd(
            Kind kind, Money asked, @Nullable Money usual, boolean twiceThatDay, boolean aLineAtNought) {
        List<Oddity> odd = new ArrayList<>();
        if (usual != null && asked.compareTo(usual.times(FAR)) > 0) {
            odd.add(new Oddity(kind == Kind.PLAN ? Why.ABOVE_PLAN : Why.ABOVE_CUSTOMER, usual));
        }
        if (twiceThatDay) {
            odd.add(new Oddity(Why.TWICE_A_DAY, null));
        }
        if (aLineAtNought) {
            odd.add(new Oddity(Why.AT_NOUGHT, null));
        }
        return odd;
    }
}
