/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Glide Path Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getGlidePathKind()
 * @model
 * @generated
 */
public enum GlidePathKind implements Enumerator {
	/**
	 * The '<em><b>ILS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ILS_VALUE
	 * @generated
	 * @ordered
	 */
	ILS(0, "ILS", "ILS"),

	/**
	 * The '<em><b>MLS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MLS_VALUE
	 * @generated
	 * @ordered
	 */
	MLS(1, "MLS", "MLS"),

	/**
	 * The '<em><b>GBAS SBAS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GBAS_SBAS_VALUE
	 * @generated
	 * @ordered
	 */
	GBAS_SBAS(2, "GBAS_SBAS", "GBAS_SBAS");

	/**
	 * The '<em><b>ILS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ILS
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ILS_VALUE = 0;

	/**
	 * The '<em><b>MLS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MLS
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int MLS_VALUE = 1;

	/**
	 * The '<em><b>GBAS SBAS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GBAS_SBAS
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int GBAS_SBAS_VALUE = 2;

	/**
	 * An array of all the '<em><b>Glide Path Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final GlidePathKind[] VALUES_ARRAY =
		new GlidePathKind[] {
			ILS,
			MLS,
			GBAS_SBAS,
		};

	/**
	 * A public read-only list of all the '<em><b>Glide Path Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<GlidePathKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Glide Path Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlidePathKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			GlidePathKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Glide Path Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlidePathKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			GlidePathKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Glide Path Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GlidePathKind get(int value) {
		switch (value) {
			case ILS_VALUE: return ILS;
			case MLS_VALUE: return MLS;
			case GBAS_SBAS_VALUE: return GBAS_SBAS;
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
	private GlidePathKind(int value, String name, String literal) {
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

} //GlidePathKind
