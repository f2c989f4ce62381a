package slopewright.drawing.signal;

import slopewright.drawing.scene.Ink;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.LightForm;

/** How lights are drawn on paper and what they are called. */
public final class Lights {

    private Lights() {
    }

    /** Returns the ink of a colour. */
    public static Ink ink(Colour colour) {
        return switch (colour) {
            case WHITE -> Ink.WHITE;
            case RED -> Ink.RED;
            case GREEN -> Ink.GREEN;
            case AMBER -> Ink.AMBER;
            case NONE -> Ink.PAPER;
        };
    }

    /** Returns what a light is called, such as red, pulsating white or no light, as an argument of a message. */
    public static Argument word(Light light) {
        if (light.form() == LightForm.OFF) {
            return Words.term("drawing.no-light");
        }
        Argument colour = Words.term("colour." + light.colour().key());
        return light.form() == LightForm.STEADY ? colour : Message.of("drawing.light." + light.form().key(), colour);
    }
}
