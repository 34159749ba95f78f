package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.util.UUID;

/**
 * An agreement as a line of a list.
 *
 * @param home the address in one line
 */
public record AgreementRow(
        UUID agreementId,
        int number,
        UUID homeId,
        String home,
        UUID signerId,
        String signer,
        Wording plan,
        Term term,
        Money price,
        AgreementState state) {}
