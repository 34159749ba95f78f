package changeover.scheduling.dayplan.routes;

/**
 * Who drives where in which order, so that every promised hour is kept, as many homes as can be are visited, and the
 * driving is short. The same rule, whoever reckons behind it.
 */
public interface Routes {

    DayRoutes of(TravelDay day);
}
