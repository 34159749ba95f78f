package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Under which heads the pages of the accounts are found. */
@MessageBundle("groups")
public interface MoneyGroupWords {

    @Message("Everything about money")
    String heading();

    @Message("Billing")
    String billing();

    @Message("Money received")
    String received();

    @Message("What is late")
    String late();

    @Message("The books")
    String books();
}
