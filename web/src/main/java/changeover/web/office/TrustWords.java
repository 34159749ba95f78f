package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Words for money that the law of the place keeps in trust. */
@MessageBundle("trust")
public interface TrustWords {

    @Message("Money to be kept in trust")
    String heading();

    @Message(
            "Paid for work that is due long after the sale; the place of the home asks that it be kept apart until the first visit is done.")
    String lead();

    @Message("No agreement asks for it.")
    String none();

    @Message("Agreement")
    String agreement();

    @Message("Sold")
    String sold();

    @Message("First visit")
    String first();

    @Message("Paid")
    String paid();

    @Message("Together")
    String together();

    @Message("Source")
    String source();
}
