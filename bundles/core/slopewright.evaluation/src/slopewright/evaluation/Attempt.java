package slopewright.evaluation;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Input;
import slopewright.siting.SitingException;

/**
 * A result or the reason why there is none.
 *
 * @param value   the result, empty where there is none
 * @param reason  why there is none, empty where there is a result
 * @param missing the inputs of which one would give it; empty where something else is wrong
 * @param isWrong whether what was tried is wrong as it stands, whatever else is entered
 * @param <T>     what it is
 */
public record Attempt<T>(Optional<T> value, Optional<Message> reason, List<Input> missing, boolean isWrong) {
    /** Copies the list, and refuses one that says both or neither. */
    public Attempt {
        Objects.requireNonNull(value);
        missing = List.copyOf(missing);
        if (value.isPresent() == reason.isPresent()) {
            throw new IllegalArgumentException("an attempt gives a result or a reason");
        }
    }

    /** Makes one of a result. */
    public static <T> Attempt<T> success(T value) {
        return new Attempt<>(Optional.of(value), Optional.empty(), List.of(), false);
    }

    /** Makes one of a reason. */
    public static <T> Attempt<T> failure(Message reason) {
        return new Attempt<>(Optional.empty(), Optional.of(reason), List.of(), false);
    }

    /** Tries to work something out. Numbers that nothing can be worked out of are a reason, never an end of everything else. */
    public static <T> Attempt<T> of(Supplier<T> work) {
        try {
            return success(work.get());
        } catch (SitingException e) {
            return new Attempt<>(Optional.empty(), Optional.of(e.reason()), e.missing(), e.isWrong());
        } catch (IllegalArgumentException | ArithmeticException | NoSuchElementException | IndexOutOfBoundsException e) {
            return failure(Message.of("evaluation.out-of-range", Words.name(String.valueOf(e.getMessage()))));
        }
    }

    /** Works on from the result; the reason stays where there is none. */
    public <U> Attempt<U> then(Function<T, Attempt<U>> work) {
        return value.isPresent() ? work.apply(value.get()) : new Attempt<>(Optional.empty(), reason, missing, isWrong);
    }

    /**
     * Returns the result.
     *
     * @throws SitingException where there is none, for its reason
     */
    public T orThrow() {
        return value.orElseThrow(() -> new SitingException(reason.orElseThrow()));
    }
}
