/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Hand Order</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getHandOrder()
 * @model
 * @generated
 */
public enum HandOrder implements Enumerator {
	/**
	 * The '<em><b>NOT STATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_STATED_VALUE
	 * @generated
	 * @ordered
	 */
	NOT_STATED(0, "NOT_STATED", "NOT_STATED"),

	/**
	 * The '<em><b>TURN LEVEL SET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURN_LEVEL_SET_VALUE
	 * @generated
	 * @ordered
	 */
	TURN_LEVEL_SET(1, "TURN_LEVEL_SET", "TURN_LEVEL_SET"),

	/**
	 * The '<em><b>TURN SET LEVEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURN_SET_LEVEL_VALUE
	 * @generated
	 * @ordered
	 */
	TURN_SET_LEVEL(2, "TURN_SET_LEVEL", "TURN_SET_LEVEL"),

	/**
	 * The '<em><b>LEVEL TURN SET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEVEL_TURN_SET_VALUE
	 * @generated
	 * @ordered
	 */
	LEVEL_TURN_SET(3, "LEVEL_TURN_SET", "LEVEL_TURN_SET"),

	/**
	 * The '<em><b>LEVEL SET TURN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEVEL_SET_TURN_VALUE
	 * @generated
	 * @ordered
	 */
	LEVEL_SET_TURN(4, "LEVEL_SET_TURN", "LEVEL_SET_TURN"),

	/**
	 * The '<em><b>SET TURN LEVEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_TURN_LEVEL_VALUE
	 * @generated
	 * @ordered
	 */
	SET_TURN_LEVEL(5, "SET_TURN_LEVEL", "SET_TURN_LEVEL"),

	/**
	 * The '<em><b>SET LEVEL TURN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_LEVEL_TURN_VALUE
	 * @generated
	 * @ordered
	 */
	SET_LEVEL_TURN(6, "SET_LEVEL_TURN", "SET_LEVEL_TURN");

	/**
	 * The '<em><b>NOT STATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_STATED
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int NOT_STATED_VALUE = 0;

	/**
	 * The '<em><b>TURN LEVEL SET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURN_LEVEL_SET
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int TURN_LEVEL_SET_VALUE = 1;

	/**
	 * The '<em><b>TURN SET LEVEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURN_SET_LEVEL
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int TURN_SET_LEVEL_VALUE = 2;

	/**
	 * The '<em><b>LEVEL TURN SET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEVEL_TURN_SET
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int LEVEL_TURN_SET_VALUE = 3;

	/**
	 * The '<em><b>LEVEL SET TURN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEVEL_SET_TURN
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int LEVEL_SET_TURN_VALUE = 4;

	/**
	 * The '<em><b>SET TURN LEVEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_TURN_LEVEL
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int SET_TURN_LEVEL_VALUE = 5;

	/**
	 * The '<em><b>SET LEVEL TURN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_LEVEL_TURN
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int SET_LEVEL_TURN_VALUE = 6;

	/**
	 * An array of all the '<em><b>Hand Order</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final HandOrder[] VALUES_ARRAY =
		new HandOrder[] {
			NOT_STATED,
			TURN_LEVEL_SET,
			TURN_SET_LEVEL,
			LEVEL_TURN_SET,
			LEVEL_SET_TURN,
			SET_TURN_LEVEL,
			SET_LEVEL_TURN,
		};

	/**
	 * A public read-only list of all the '<em><b>Hand Order</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<HandOrder> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Hand Order</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HandOrder get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HandOrder result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hand Order</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HandOrder getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HandOrder result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hand Order</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HandOrder get(int value) {
		switch (value) {
			case NOT_STATED_VALUE: return NOT_STATED;
			case TURN_LEVEL_SET_VALUE: return TURN_LEVEL_SET;
			case TURN_SET_LEVEL_VALUE: return TURN_SET_LEVEL;
			case LEVEL_TURN_SET_VALUE: return LEVEL_TURN_SET;
			case LEVEL_SET_TURN_VALUE: return LEVEL_SET_TURN;
			case SET_TURN_LEVEL_VALUE: return SET_TURN_LEVEL;
			case SET_LEVEL_TURN_VALUE: return SET_LEVEL_TURN;
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
	private HandOrder(int value, String name, String literal) {
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

} //HandOrder
