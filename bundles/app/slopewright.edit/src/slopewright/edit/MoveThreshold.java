package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.siting.SitingException;
import slopewright.siting.site.AerodromePlaces;

/**
 * Moves the threshold of a runway end and with it the end of the runway. Length, strip, landing distances and bearings that were entered
 * change by as much as the thresholds say; points of profiles stay where they are on the ground and get new chainages; elevations stay as
 * entered, for nobody has measured them at the new place. The aids and the glide path of the end are placed from its threshold
 * and move along.
 */
public final class MoveThreshold extends RecordedEdit {

    /** So near to each other no two thresholds lie, metres. */
    private static final double LEAST_APART_M = 1;
    private static final double MILLIMETRES = 1000;
    private static final double MILLIONTHS = 1e6;

    private final RunwayEnd end;
    private final Place to;

    /** What two thresholds say of their runway: metres between them, and the true bearing at each of them to the other. */
    private record Line(double lengthM, double bearingDeg, double backDeg) {
    }

    private MoveThreshold(RunwayEnd end, Place to) {
        super("Move threshold");
        this.end = end;
        this.to = to;
    }

    /**
     * Moves a threshold.
     *
     * @param end a runway end with a threshold
     * @param to  its new coordinates; what is missing there stays as it is
     */
    public static MoveThreshold to(RunwayEnd end, Place to) {
        return new MoveThreshold(end, to);
    }

    private Optional<Runway> runway() {
        return end.eContainer() instanceof Runway runway ? Optional.of(runway) : Optional.empty();
    }

    private Optional<RunwayEnd> opposite() {
        return runway().flatMap(runway -> runway.getEnds().stream().filter(far -> far != end).findFirst());
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> scope = new ArrayList<>(List.of(end));
        scope.addAll(end.getSiteProfile());
        Optional.ofNullable(end.getThreshold()).ifPresent(scope::add);
        opposite().ifPresent(scope::add);
        runway().ifPresent(runway -> {
            scope.add(runway);
            scope.addAll(runway.getCentreLine());
        });
        return scope;
    }

    @Override
    protected void apply() {
        if (end.getThreshold() == null) {
            throw new EditException(Message.said("edit.no-threshold", end.getDesignator()));
        }
        Optional<Line> before = line();
        MovePlaces.take(end.getThreshold(), to);
        Optional<Line> after = line();
        if (before.isPresent() && after.isPresent()) {
            if (after.get().lengthM() < LEAST_APART_M) {
                throw new EditException(Message.of("edit.thresholds"));
            }
            follow(before.get(), after.get());
        }
    }

    private Optional<Line> line() {
        Place far = opposite().map(RunwayEnd::getThreshold).orElse(null);
        if (far == null || !(end.eContainer().eContainer() instanceof Aerodrome aerodrome)) {
            return Optional.empty();
        }
        try {
            AerodromePlaces places = AerodromePlaces.of(aerodrome);
            Place near = end.getThreshold();
            return Optional.of(new Line(places.distanceM(near, far), places.bearingDeg(near, far), places.bearingDeg(far, near)));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    private void follow(Line before, Line after) {
        double longerM = after.lengthM() - before.lengthM();
        Runway runway = runway().orElseThrow();
        RunwayEnd far = opposite().orElseThrow();
        add(runway, Literals.RUNWAY__LENGTH_M, longerM);
        add(runway, Literals.RUNWAY__STRIP_LENGTH_M, longerM);
        add(end, Literals.RUNWAY_END__LANDING_DISTANCE_M, longerM);
        add(far, Literals.RUNWAY_END__LANDING_DISTANCE_M, longerM);
        turn(end, after.bearingDeg() - before.bearingDeg());
        turn(far, after.backDeg() - before.backDeg());
        renumber(end.getSiteProfile(), longerM);
        if (runway.getEnds().get(0) == end) {
            renumber(runway.getCentreLine(), longerM);
        }
    }

    private static void renumber(List<ProfilePoint> points, double byM) {
        points.forEach(point -> add(point, Literals.PROFILE_POINT__CHAINAGE_M, byM));
    }

    private static void add(EObject element, EAttribute attribute, double byM) {
        if (element.eGet(attribute) instanceof Double value) {
            element.eSet(attribute, Math.round((value + byM) * MILLIMETRES) / MILLIMETRES);
        }
    }

    private static void turn(RunwayEnd end, double byDeg) {
        if (end.getTrueBearingDeg() != null) {
            double turned = Math.round((end.getTrueBearingDeg() + byDeg) * MILLIONTHS) / MILLIONTHS;
            end.setTrueBearingDeg(Angles.normaliseBearingDeg(turned));
        }
    }
}
