package changeover.web.office;

import java.util.List;

/** The intervals, tasks and kinds that a business wrote over the catalogue or added to it, in the reader's words. */
public record OwnRowsView(List<Row> rows, List<Choice> tasks, List<Choice> seasons, List<Added> added) {

    /**
     * @param machine its id; empty for every machine
     * @param at where the machine's page is, below the business's own; empty for every machine
     */
    public record Row(
            String taskCode, String task, String machine, String whose, String at, String often, String basis) {}

    public record Choice(String code, String words) {}

    /** @param task whether it is a task; else a kind of equipment */
    public record Added(boolean task, String code, String words) {}
}
