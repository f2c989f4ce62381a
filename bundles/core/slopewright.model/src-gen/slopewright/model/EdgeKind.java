/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Edge Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getEdgeKind()
 * @model
 * @generated
 */
public enum EdgeKind implements Enumerator {
	/**
	 * The '<em><b>TAXIWAY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TAXIWAY_VALUE
	 * @generated
	 * @ordered
	 */
	TAXIWAY(0, "TAXIWAY", "TAXIWAY"),

	/**
	 * The '<em><b>APRON</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #APRON_VALUE
	 * @generated
	 * @ordered
	 */
	APRON(1, "APRON", "APRON"),

	/**
	 * The '<em><b>OTHER RUNWAY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_RUNWAY_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER_RUNWAY(2, "OTHER_RUNWAY", "OTHER_RUNWAY");

	/**
	 * The '<em><b>TAXIWAY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TAXIWAY
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int TAXIWAY_VALUE = 0;

	/**
	 * The '<em><b>APRON</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #APRON
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int APRON_VALUE = 1;

	/**
	 * The '<em><b>OTHER RUNWAY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_RUNWAY
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_RUNWAY_VALUE = 2;

	/**
	 * An array of all the '<em><b>Edge Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final EdgeKind[] VALUES_ARRAY =
		new EdgeKind[] {
			TAXIWAY,
			APRON,
			OTHER_RUNWAY,
		};

	/**
	 * A public read-only list of all the '<em><b>Edge Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<EdgeKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Edge Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EdgeKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			EdgeKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Edge Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EdgeKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			EdgeKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Edge Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EdgeKind get(int value) {
		switch (value) {
			case TAXIWAY_VALUE: return TAXIWAY;
			case APRON_VALUE: return APRON;
			case OTHER_RUNWAY_VALUE: return OTHER_RUNWAY;
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
	private EdgeKind(int value, String name, String literal) {
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

} //EdgeKind
