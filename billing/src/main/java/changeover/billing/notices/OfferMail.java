package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An offer goes to whoever signs, with its paper: written in the transaction that makes the offer, sent after it. */
@ApplicationScoped
public class OfferMail {

    @Inject
    Agreements agreements;

    @Inject
    Homes homes;

    @Inject
    Recipients recipients;

    @Inject
    Documents documents;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    /** Offers that were written before are left as they are. */
    public void write(Collection<UUID> agreementIds) {
        String business = businesses.current().name();
        String phone = businesses.profile().facts().phone();
        List<NewMessage> messages = new ArrayList<>();
        List<Wanted> papers = new ArrayList<>();
        List<Agreement> offers = agreements.all(agreementIds);
        Map<UUID, Recipient> signers =
                recipients.of(offers.stream().map(Agreement::signerId).toList());
        Map<UUID, String> lines = homes
                .all(offers.stream().map(Agreement::homeId).toList())
                .stream()
                .collect(Collectors.toMap(Home::id, Home::line));
        for (Agreement offer : offers) {
            Wanted paper = Wanted.of(PaperKind.OFFER, offer.id());
            papers.add(paper);
            Recipient signer = signers.get(offer.signerId());
            if (signer != null) {
                String home = lines.getOrDefault(offer.homeId(), "");
                messages.add(message(offer, home, signer.in(offer.language()), paper, business, phone));
            }
        }
        documents.order(papers);
        outbox.write(messages);
    }

    private NewMessage message(
            Agreement offer, String home, Recipient signer, Wanted paper, String business, @Nullable String phone) {
        Locale locale = Locales.of(offer.language());
        LetterText text = LetterText.of(
                offer.language(),
                "offer",
                signer.name(),
                business,
                phone,
                Map.of(
                        "home", home,
                        "plan", offer.planName().in(locale),
                        "from", DayInPaper.of(offer.term().from(), locale),
                        "until", DayInPaper.of(offer.term().last(), locale),
                        "price", offer.price().format(locale),
                        "valid", DayInPaper.of(offer.validUntil(), locale)));
        return new NewMessage(
                "offer", offer.id(), 1, offer.homeId(), signer, text.subject(), text.body(), List.of(paper));
    }
}
