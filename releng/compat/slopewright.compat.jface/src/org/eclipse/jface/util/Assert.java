package org.eclipse.jface.util;

/**
 * The four checks that the 2007 diagram framework still calls and that JFace no longer carries.
 * Only that framework's compiled code uses this class.
 */
public final class Assert {

    private Assert() {
    }

    /**
     * Requires an object.
     *
     * @param object the object that must be there
     */
    public static void isNotNull(Object object) {
        isNotNull(object, "");
    }

    /**
     * Requires an object.
     *
     * @param object the object that must be there
     * @param message what to say where it is not
     */
    public static void isNotNull(Object object, String message) {
        if (object == null) {
            throw new IllegalArgumentException("null argument: " + message);
        }
    }

    /**
     * Requires a condition.
     *
     * @param expression the condition
     * @return always true
     */
    public static boolean isTrue(boolean expression) {
        return isTrue(expression, "");
    }

    /**
     * Requires a condition.
     *
     * @param expression the condition
     * @param message what to say where it does not hold
     * @return always true
     */
    public static boolean isTrue(boolean expression, String message) {
        if (!expression) {
            throw new IllegalArgumentException("assertion failed: " + message);
        }
        return true;
    }
}
