package changeover.web.session;

import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.tenants.Today;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The frame around the page in hand: whose shop, who is here, which day, what was just done. */
@ApplicationScoped
public class Frames {

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    SettableClock clock;

    @Inject
    TurnsOfTheYear turns;

    @Inject
    SaidOnce said;

    @Inject
    RoutingContext request;

    /** The language of the person in front of the page. */
    public Locale locale() {
        return Mishaps.locale(request);
    }

    /** The frame of a page for somebody who works here; the tab it stands under, or none. */
    public Frame of(@Nullable Tab open) {
        return of(open, locale());
    }

    /** The frame of a page for a customer, in the customer's language. */
    public Frame forCustomer(Locale locale) {
        return of(null, locale);
    }

    private Frame of(@Nullable Tab open, Locale locale) {
        Businesses.AtHand here = businesses.atHand();
        Business business = here.business();
        BusinessProfile.Facts profile = here.profile().facts();
        Optional<Membership> member = Optional.ofNullable(here.member());
        LocalDate day = today.day();
        return new Frame(
                business.name(),
                profile.tagline() == null ? "" : profile.tagline(),
                business.slug(),
                member.map(Membership::name).orElse(""),
                member.map(one -> one.role().code()).orElse(""),
                locale.getLanguage().equals("fr") ? "fr-CA" : "en",
                open,
                day,
                profile.theme(),
                turns.of(day.getYear()),
                clock.isSet(),
                said.sentence(locale),
                request.normalizedPath());
    }
}
