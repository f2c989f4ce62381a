package slopewright.ui.diagram.policies;

import java.util.Optional;

import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;

import slopewright.drawing.scene.ScenePoint;

/** Asks a part to move its element by some metres in the world, or to show what that would give. */
public final class MoveRequest extends Request {

    private double byX;
    private double byY;
    private boolean free;
    private boolean exact;
    private boolean unsnapped;
    private Object grip;
    private ScenePoint from;

    /** Makes a request that moves by nothing yet. */
    public MoveRequest() {
        super(RequestConstants.REQ_MOVE);
    }

    /**
     * Says how far.
     *
     * @param newByX metres to the right
     * @param newByY metres up
     */
    public void setDelta(double newByX, double newByY) {
        byX = newByX;
        byY = newByY;
    }

    /** Returns metres to the right. */
    public double byX() {
        return byX;
    }

    /** Returns metres up. */
    public double byY() {
        return byY;
    }

    /** Returns where in the world the mouse took the element, empty where a key moves it. */
    public Optional<ScenePoint> from() {
        return Optional.ofNullable(from);
    }

    /** Says where in the world the mouse took the element. */
    public void setFrom(ScenePoint place) {
        from = place;
    }

    /** Returns whether the element may leave the line along which it moves by default. */
    public boolean isFree() {
        return free;
    }

    /** Says whether the element may leave the line along which it moves by default. */
    public void setFree(boolean value) {
        free = value;
    }

    /** Returns whether the distance is meant to the millimetre, as one from the keyboard is; one of the mouse may be rounded. */
    public boolean isExact() {
        return exact;
    }

    /** Says whether the distance is meant to the millimetre. */
    public void setExact(boolean value) {
        exact = value;
    }

    /** Returns whether the element goes where the mouse is, whatever is near. */
    public boolean isUnsnapped() {
        return unsnapped;
    }

    /** Says whether the element goes where the mouse is, whatever is near. */
    public void setUnsnapped(boolean value) {
        unsnapped = value;
    }

    /** Returns the element by which the user has taken what is moved, null where it is no part of it. */
    public Object grip() {
        return grip;
    }

    /** Says by which element the user has taken what is moved. */
    public void setGrip(Object element) {
        grip = element;
    }
}
