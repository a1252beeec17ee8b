package org.marshlight.digester;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * How the gas is kept and used.
 *
 * @param pressureKPa pressure of the store above the air's
 */
@Meaning("How the gas is kept and used.")
public record GasDesign(
    @Quantity(
            unit = "m3",
            min = 0,
            max = 500,
            meaning = "Volume of the store at its own temperature and pressure.",
            usual = "digester.default.gas-store")
        Double storeM3,
    @Size(max = 8) @Meaning("What burns the gas, first served first.")
        List<@NotNull @Valid GasUse> uses,
    @Meaning("What becomes of gas that the store cannot hold.") @Usual("flare") GasSurplus surplus,
    @Size(max = 12)
        @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Months in which no gas is taken, 1 = January.")
        List<Integer> monthsOff,
    @Quantity(
            unit = "kPa",
            min = 0,
            max = 20,
            meaning = "Pressure of the store above the air's; not given, it is not shown safe.")
        Double pressureKPa) {}
