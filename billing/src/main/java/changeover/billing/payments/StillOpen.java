package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Money of an earlier day pays of a document no more than was open then and is open still: nothing is paid twice. */
@ApplicationScoped
class StillOpen {

    @Inject
    Owed owed;

    @Inject
    Today today;

    /** The one due first before the others. */
    List<Spread.Owing> of(UUID customer, LocalDate day) {
        return lesser(customer, day, OpenItem::open);
    }

    /** The same, where what was given up since counts as open: money that had come before takes it back. */
    List<Spread.Owing> orGivenUp(UUID customer, LocalDate day) {
        return lesser(customer, day, item -> item.open().plus(item.givenUp()));
    }

    private List<Spread.Owing> lesser(UUID customer, LocalDate day, Function<OpenItem, Money> rest) {
        List<OpenItem> then = owed.open(customer, day);
        if (then.isEmpty() || !day.isBefore(today.day())) {
            return then.stream()
                    .map(item -> new Spread.Owing(item.invoiceId(), item.open()))
                    .toList();
        }
        Map<UUID, Money> now =
                owed.unpaid(customer, today.day()).stream().collect(Collectors.toMap(OpenItem::invoiceId, rest));
        return then.stream()
                .flatMap(item -> Stream.ofNullable(now.get(item.invoiceId()))
                        .map(left -> new Spread.Owing(
                                item.invoiceId(), left.compareTo(item.open()) < 0 ? left : item.open())))
                .toList();
    }
}
