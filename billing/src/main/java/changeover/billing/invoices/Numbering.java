package changeover.billing.invoices;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;

/** How this business writes the numbers of its invoices, or of its credit notes. */
@Entity
@Table(name = "numbering")
public class Numbering extends Owned {

    private String kind = "";
    private String pattern = "";

    static Numbering chosen(NumberedKind kind, SeriesPattern pattern) {
        Numbering numbering = new Numbering();
        numbering.kind = kind.code();
        numbering.pattern = pattern.text();
        return numbering;
    }

    /** From the next document on; those issued keep their numbers. */
    void choose(SeriesPattern other) {
        pattern = other.text();
    }

    public SeriesPattern pattern() {
        return new SeriesPattern(pattern);
    }

    public boolean isOf(NumberedKind other) {
        return kind.equals(other.code());
    }
}
