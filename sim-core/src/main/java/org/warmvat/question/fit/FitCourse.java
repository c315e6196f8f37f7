package org.warmvat.question.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.warmvat.log.Log;

/** Log and model beside one another, reading by reading. */
public final class FitCourse {

    private final List<LocalDateTime> times;
    private final double[] loggedC;
    private final double[] drawnC;
    private final double[] fittedC;
    private final Set<Integer> afresh;

    FitCourse(List<LocalDateTime> times, double[] loggedC, double[] drawnC, double[] fittedC, Set<Integer> afresh) {
        this.times = List.copyOf(times);
        this.loggedC = loggedC;
        this.drawnC = drawnC;
        this.fittedC = fittedC;
        this.afresh = Set.copyOf(afresh);
    }

    static FitCourse of(FitModel model, double[] point) {
        List<LocalDateTime> times = new ArrayList<>();
        for (Log stretch : model.stretches()) {
            for (double time : stretch.slurryC().timesS()) {
                times.add(stretch.start().plusSeconds(Math.round(time)));
            }
        }
        return new FitCourse(
                times,
                model.observations().values(),
                model.slurryC(model.drawn(), point),
                model.slurryC(model.adjusted(point), point),
                Arrays.stream(model.bounds()).boxed().collect(Collectors.toSet()));
    }

    /** Whether the tank starts afresh at a reading, after a hole of the log. */
    public boolean startsAfresh(int index) {
        return afresh.contains(index);
    }

    /** The logger's clock at each reading. */
    public List<LocalDateTime> times() {
        return times;
    }

    /** The slurry as logged, °C; a copy. */
    public double[] loggedC() {
        return loggedC.clone();
    }

    /** The slurry of the tank as drawn, °C; a copy. */
    public double[] drawnC() {
        return drawnC.clone();
    }

    /** The slurry of the tank as fitted, °C; a copy. */
    public double[] fittedC() {
        return fittedC.clone();
    }

    /** Logged less fitted, K. */
    public double[] residualsK() {
        double[] left = loggedC.clone();
        Arrays.setAll(left, i -> left[i] - fittedC[i]);
        return left;
    }
}
