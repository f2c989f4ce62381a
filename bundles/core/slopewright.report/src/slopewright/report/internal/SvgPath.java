package slopewright.report.internal;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the data of a path of scalable vector graphics. */
final class SvgPath {

    private static final Pattern TOKEN = Pattern.compile("([MmLlHhVvCcSsQqTtAaZz])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)"
            + "|([\\s,]+)|(.)", Pattern.DOTALL);

    private final Path2D path = new Path2D.Double();
    private final Matcher tokens;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double controlX;
    private double controlY;
    private String next;

    private SvgPath(String data) {
        tokens = TOKEN.matcher(data);
        advance();
    }

    /** Returns the shape of path data. */
    static Path2D of(String data) {
        SvgPath reader = new SvgPath(data);
        reader.read();
        return reader.path;
    }

    private void advance() {
        next = null;
        while (next == null && tokens.find()) {
            if (tokens.group(4) != null) {
                throw new IllegalArgumentException("'" + tokens.group(4) + "' in the data of a path");
            }
            next = tokens.group(3) == null ? tokens.group() : null;
        }
    }

    private boolean atNumber() {
        return next != null && !Character.isLetter(next.charAt(0));
    }

    private double number() {
        if (!atNumber()) {
            throw new IllegalArgumentException("a number is missing in the data of a path");
        }
        double value = Double.parseDouble(next);
        advance();
        return value;
    }

    private void read() {
        char before = 'M';
        while (next != null) {
            char command = next.charAt(0);
            if (!Character.isLetter(command)) {
                throw new IllegalArgumentException("a command is missing in the data of a path");
            }
            advance();
            do {
                step(command, before);
                before = Character.toUpperCase(command);
                command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
            } while (atNumber() && before != 'Z');
        }
    }

    private void step(char command, char before) {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                moveTo(fromX + number(), fromY + number());
                path.moveTo(x, y);
                startX = x;
                startY = y;
            }
            case 'L' -> lineTo(fromX + number(), fromY + number());
            case 'H' -> lineTo(fromX + number(), y);
            case 'V' -> lineTo(x, fromY + number());
            case 'C' -> cubic(fromX + number(), fromY + number(), fromX, fromY);
            case 'S' -> cubic(before == 'C' || before == 'S' ? 2 * x - controlX : x, before == 'C' || before == 'S' ? 2 * y - controlY : y,
                    fromX, fromY);
            case 'Q' -> quadratic(fromX + number(), fromY + number(), fromX, fromY);
            case 'T' -> quadratic(before == 'Q' || before == 'T' ? 2 * x - controlX : x, before == 'Q' || before == 'T' ? 2 * y - controlY
                    : y, fromX, fromY);
            case 'A' -> arc(fromX, fromY);
            default -> {
                path.closePath();
                moveTo(startX, startY);
            }
        }
    }

    private void moveTo(double toX, double toY) {
        x = toX;
        y = toY;
    }

    private void lineTo(double toX, double toY) {
        path.lineTo(toX, toY);
        moveTo(toX, toY);
    }

    private void cubic(double firstX, double firstY, double fromX, double fromY) {
        controlX = fromX + number();
        controlY = fromY + number();
        moveTo(fromX + number(), fromY + number());
        path.curveTo(firstX, firstY, controlX, controlY, x, y);
    }

    private void quadratic(double firstX, double firstY, double fromX, double fromY) {
        controlX = firstX;
        controlY = firstY;
        moveTo(fromX + number(), fromY + number());
        path.quadTo(controlX, controlY, x, y);
    }

    /** An arc from its end points, by the published change to centre and angles. */
    private void arc(double fromX, double fromY) {
        double radiusX = Math.abs(number());
        double radiusY = Math.abs(number());
        double turn = Math.toRadians(number());
        boolean large = number() != 0;
        boolean sweep = number() != 0;
        double toX = fromX + number();
        double toY = fromY + number();
        if (radiusX == 0 || radiusY == 0 || x == toX && y == toY) {
            lineTo(toX, toY);
            return;
        }
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double halfX = cos * (x - toX) / 2 + sin * (y - toY) / 2;
        double halfY = -sin * (x - toX) / 2 + cos * (y - toY) / 2;
        double stretch = Math.sqrt(Math.max(1, halfX * halfX / (radiusX * radiusX) + halfY * halfY / (radiusY * radiusY)));
        radiusX *= stretch;
        radiusY *= stretch;
        double least = radiusX * radiusX * halfY * halfY + radiusY * radiusY * halfX * halfX;
        double factor = Math.sqrt(Math.max(0, radiusX * radiusX * radiusY * radiusY / least - 1)) * (large == sweep ? -1 : 1);
        double centreX = factor * radiusX * halfY / radiusY;
        double centreY = -factor * radiusY * halfX / radiusX;
        double begin = Math.toDegrees(Math.atan2((halfY - centreY) / radiusY, (halfX - centreX) / radiusX));
        double end = Math.toDegrees(Math.atan2((-halfY - centreY) / radiusY, (-halfX - centreX) / radiusX));
        double extent = (end - begin) % 360;
        extent += sweep && extent < 0 ? 360 : !sweep && extent > 0 ? -360 : 0;
        Arc2D arc = new Arc2D.Double(-radiusX, -radiusY, 2 * radiusX, 2 * radiusY, -begin, -extent, Arc2D.OPEN);
        AffineTransform place = AffineTransform.getTranslateInstance((x + toX) / 2, (y + toY) / 2);
        place.rotate(turn);
        place.translate(centreX, centreY);
        path.append(place.createTransformedShape(arc), true);
        moveTo(toX, toY);
    }
}
