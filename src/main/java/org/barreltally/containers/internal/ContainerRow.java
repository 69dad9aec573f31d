package org.barreltally.containers.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.hibernate.annotations.Immutable;

/** A container size in the database: added once, never changed. */
@Entity
@Immutable
@Table(name = "containers")
public class ContainerRow {

  private static final int BRIM_DECIMALS = 4;
  private static final int ML_DECIMALS = 9;
  private static final int GRAM_DECIMALS = 3;

  @Id private String code;
  private String name;

  @Column(name = "net_value")
  private BigDecimal netValue;

  @Column(name = "net_unit")
  private String netUnit;

  @Column(name = "net_ml")
  private BigDecimal netML;

  @Column(name = "brimful_ml")
  private BigDecimal brimfulML;

  @Column(name = "empty_g")
  private BigDecimal emptyGrams;

  private String material;

  protected ContainerRow() {}

  public ContainerRow(Container added) {
    code = added.code();
    name = added.name();
    netValue = added.netContents().value();
    netUnit = added.netContents().unit().code();
    netML = in(added.netContents(), Unit.ML, ML_DECIMALS);
    brimfulML = in(added.brimful(), Unit.ML, ML_DECIMALS);
    emptyGrams = in(added.emptyWeight(), Unit.G, GRAM_DECIMALS);
    material = added.material().code();
  }

  /** The brim is shown in the unit of the contents, the empty weight in grams. */
  public Container asContainer() {
    Unit unit = Unit.of(netUnit);
    return new Container(
        code,
        name,
        Quantity.of(stripped(netValue), unit),
        brimfulML == null
            ? null
            : Quantity.of(
                stripped(
                    Quantity.rounded(brimfulML.doubleValue(), Unit.ML, 3)
                        .to(unit, BRIM_DECIMALS)
                        .value()),
                unit),
        emptyGrams == null ? null : Quantity.of(stripped(emptyGrams), Unit.G),
        Container.Material.of(material));
  }

  private static BigDecimal in(Quantity quantity, Unit unit, int decimals) {
    return quantity == null ? null : quantity.in(unit).setScale(decimals, RoundingMode.HALF_UP);
  }

  private static BigDecimal stripped(BigDecimal value) {
    return value.stripTrailingZeros();
  }
}
