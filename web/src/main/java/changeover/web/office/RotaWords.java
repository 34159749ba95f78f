package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of turns on call that go round. */
@MessageBundle("rota")
public interface RotaWords {

    @Message("On call in turns")
    String heading();

    @Message("Everyone named has a day or a week, then the next follows, and the first again.")
    String lead();

    @Message("Whoever no longer works here is passed over. A day that has somebody stays theirs.")
    String hint();

    @Message("First")
    String first();

    @Message("Then")
    String then();

    @Message("nobody")
    String nobody();

    @Message("Each turn lasts")
    String lasts();

    @Message("a week")
    String a_week();

    @Message("a day")
    String a_day();

    @Message("Write the turns down")
    String write();

    @Message("Let them go round")
    String go_round();
}
