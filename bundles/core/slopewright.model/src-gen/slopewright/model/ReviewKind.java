/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Review Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getReviewKind()
 * @model
 * @generated
 */
public enum ReviewKind implements Enumerator {
	/**
	 * The '<em><b>COMMENT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMENT_VALUE
	 * @generated
	 * @ordered
	 */
	COMMENT(0, "COMMENT", "COMMENT"),

	/**
	 * The '<em><b>ANSWER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANSWER_VALUE
	 * @generated
	 * @ordered
	 */
	ANSWER(1, "ANSWER", "ANSWER"),

	/**
	 * The '<em><b>ACCEPTED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ACCEPTED_VALUE
	 * @generated
	 * @ordered
	 */
	ACCEPTED(2, "ACCEPTED", "ACCEPTED"),

	/**
	 * The '<em><b>RETURNED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RETURNED_VALUE
	 * @generated
	 * @ordered
	 */
	RETURNED(3, "RETURNED", "RETURNED"),

	/**
	 * The '<em><b>SIGNED OFF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIGNED_OFF_VALUE
	 * @generated
	 * @ordered
	 */
	SIGNED_OFF(4, "SIGNED_OFF", "SIGNED_OFF");

	/**
	 * The '<em><b>COMMENT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMENT
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int COMMENT_VALUE = 0;

	/**
	 * The '<em><b>ANSWER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANSWER
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ANSWER_VALUE = 1;

	/**
	 * The '<em><b>ACCEPTED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ACCEPTED
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ACCEPTED_VALUE = 2;

	/**
	 * The '<em><b>RETURNED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RETURNED
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int RETURNED_VALUE = 3;

	/**
	 * The '<em><b>SIGNED OFF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIGNED_OFF
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int SIGNED_OFF_VALUE = 4;

	/**
	 * An array of all the '<em><b>Review Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ReviewKind[] VALUES_ARRAY =
		new ReviewKind[] {
			COMMENT,
			ANSWER,
			ACCEPTED,
			RETURNED,
			SIGNED_OFF,
		};

	/**
	 * A public read-only list of all the '<em><b>Review Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ReviewKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Review Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReviewKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ReviewKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Review Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReviewKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ReviewKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Review Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReviewKind get(int value) {
		switch (value) {
			case COMMENT_VALUE: return COMMENT;
			case ANSWER_VALUE: return ANSWER;
			case ACCEPTED_VALUE: return ACCEPTED;
			case RETURNED_VALUE: return RETURNED;
			case SIGNED_OFF_VALUE: return SIGNED_OFF;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private ReviewKind(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}

} //ReviewKind
