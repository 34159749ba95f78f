package changeover.contracts.agreements;

import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.plans.PlanFacts;
import java.util.List;

/** The tasks of a plan as they were sold, kept with the agreement: what a machine that is read later is promised. */
record SoldTasks(List<PlanFacts.Promise> tasks) {

    SoldTasks {
        tasks = List.copyOf(tasks);
    }

    static String write(PlanFacts plan) {
        return CatalogueJson.write(new SoldTasks(plan.tasks()));
    }

    static List<PlanFacts.Promise> read(String json) {
        return CatalogueJson.read(json, SoldTasks.class).tasks();
    }
}
