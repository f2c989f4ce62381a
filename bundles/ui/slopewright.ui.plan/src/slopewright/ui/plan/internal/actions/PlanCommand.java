package slopewright.ui.plan.internal.actions;

import java.util.Locale;

import slopewright.ui.plan.internal.Messages;

/** The commands of a plan; their keys are bound in {@code plugin.xml}. */
public enum PlanCommand {
    /** Shows the runways, helipads and aids. */
    SHOW_AERODROME,
    /** Shows everything, obstacles too. */
    SHOW_ALL,
    /** Shows what is selected. */
    SHOW_SELECTION,
    /** Comes closer. */
    ZOOM_IN,
    /** Goes further away. */
    ZOOM_OUT,
    /** Shows or hides the grid. */
    GRID,
    /** Lets things snap or not. */
    SNAP,
    /** Looks at the signal from the place of the pointer. */
    LOOK_HERE,
    /** Goes to the palette, to choose what to place by the keys. */
    PALETTE,
    /** Lays the selected aid out again. */
    LAY_OUT_AGAIN,
    /** Takes the ground in the line of the selected aid from models of the terrain. */
    TAKE_GROUND,
    /** Aligns the selected units on one bar line. */
    ALIGN_BAR,
    /** Aligns the selected units at one offset. */
    ALIGN_OFFSET,
    /** Spaces the selected units equally. */
    DISTRIBUTE,
    /** Copies the selected aid to the other end of its runway and lays it out there. */
    COPY_ANEW,
    /** Copies the selected aid to the other end of its runway in the same geometry. */
    COPY_SAME,
    /** Puts a copy of what is selected beside it. */
    DUPLICATE,
    /** Mirrors the selected aid to the other side. */
    MIRROR,
    /** Asks for an obstacle that was measured from a helipad. */
    ADD_OBSTACLE,
    /** Imports a survey file. */
    IMPORT,
    /** Lays a picture under the plan. */
    ADD_IMAGE,
    /** Scales the picture by two points. */
    SCALE_IMAGE,
    /** Takes the picture out. */
    REMOVE_IMAGE;

    private static final String PREFIX = "slopewright.ui.plan.";

    /** Returns the id of the command in the workbench. */
    public String id() {
        StringBuilder id = new StringBuilder(PREFIX);
        for (String word : name().split("_")) {
            String lower = word.toLowerCase(Locale.ROOT);
            id.append(id.length() == PREFIX.length() ? lower : Character.toUpperCase(lower.charAt(0)) + lower.substring(1));
        }
        return id.toString();
    }

    /** Returns what it is called. */
    public String text() {
        return Messages.get("command." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
