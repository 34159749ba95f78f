package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.fees.FeeCaution;
import changeover.billing.tax.TaxQuestion;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** What whoever sets a fee is warned of: in the business's own place, in those of its homes, and in those that have the fee. */
@ApplicationScoped
class FeeCautions {

    /** @param source in the words of the table */
    public record Caution(String place, String source) {}

    @Inject
    Businesses businesses;

    @Inject
    Homes homes;

    List<Caution> of(Collection<String> fees, Frame frame) {
        return of(fees, List.of(), frame);
    }

    /** @param others places beside the business's own */
    List<Caution> of(Collection<String> fees, Collection<String> others, Frame frame) {
        Business business = businesses.current();
        String own = TaxQuestion.region(business.country(), business.region());
        return Stream.of(List.of(own), homes.regions(), others)
                .flatMap(Collection::stream)
                .distinct()
                .flatMap(place -> fees.stream()
                        .flatMap(fee -> FeeCaution.of(place, fee).stream())
                        .distinct()
                        .map(row -> new Caution(
                                Places.region(Words.in(frame.locale()), place),
                                row.source().in(frame.locale()))))
                .toList();
    }
}
