package org.marshlight.wetland;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;

/** What the beds do in a year. */
@Meaning("What the beds do in a year.")
public record WetlandEstimate(
    @Meaning("At the end of the last bed, by month.") Monthly monthly,
    @Meaning("At the end of the last bed, over the year.") Annual annual,
    @Meaning("Months without outflow.") @Size(max = 12) List<NoOutflow> withoutOutflow,
    @Meaning("Each bed.") @Size(max = 8) List<Bed> beds,
    @Meaning("Phosphorus over the years.") @Size(max = 10) List<PhosphorusYear> phosphorusYears,
    @Meaning("Whether the outflow is fit for its use.") Fitness fitness,
    @Meaning("Areas by public rules, which differ widely.") @Size(max = 12)
        List<SizingRule> sizingRules,
    @Quantity(
            unit = "1",
            min = 1,
            max = Quantity.UNBOUNDED,
            meaning = "Largest over smallest of these areas; null without flow.")
        Double sizingRuleSpread,
    @Meaning("Soil absorption as the fallback.") SoilAbsorption soilAbsorption,
    @Meaning("What a valve sent past the beds; null without one.") Diversion diversion) {

  /** Whether a bed is large enough. */
  public enum Adequacy {
    AMPLE,
    SUFFICIENT,
    POOR,
    INSUFFICIENT
  }

  /** Whether water is fit for a use, the best first. */
  public enum UseAnswer {
    NO_OUTFLOW,
    FIT,
    WITH_CARE,
    UNFIT
  }

  /**
   * Water and what it carries at the end of the last bed, by month; concentrations are null in a
   * month without outflow.
   */
  @Meaning(
      "Water and what it carries at the end of the last bed, by month; concentrations are null in a month without outflow.")
  public record Monthly(
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that reaches the first bed.")
          List<Double> inflowM3,
      @TwelveMonths
          @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Rain on all beds.")
          List<Double> rainM3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that beds and plants give to the air.")
          List<Double> evapotranspirationM3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that leaves the last bed; nought where plants take all that comes.")
          List<Double> outflowM3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that a valve sends past the beds into the soil.")
          List<Double> divertedM3,
      @TwelveMonths
          @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Inflow over outflow: how much stronger what stays dissolved becomes.")
          List<Double> concentrationFactor,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Five-day biochemical oxygen demand of the outflow.")
          List<Double> effluentBod5MgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Chemical oxygen demand of the outflow.")
          List<Double> effluentCodMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Suspended solids of the outflow.")
          List<Double> effluentSuspendedSolidsMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Total nitrogen of the outflow.")
          List<Double> effluentTotalNitrogenMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Ammonium nitrogen of the outflow.")
          List<Double> effluentAmmoniumNitrogenMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrate nitrogen of the outflow.")
          List<Double> effluentNitrateNitrogenMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Total phosphorus of the outflow, in the fifth year.")
          List<Double> effluentTotalPhosphorusMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium of the outflow.")
          List<Double> effluentPotassiumMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Minerals dissolved in the outflow, those of the water supply included.")
          List<Double> effluentDissolvedSolidsMgL,
      @TwelveMonths
          @Quantity(
              unit = "dS/m",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Electrical conductivity of the outflow, from its dissolved solids.")
          List<Double> effluentConductivityDSM,
      @TwelveMonths
          @Quantity(
              unit = "{CFU}/dL",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Faecal coliforms in 100 mL of the outflow.")
          List<Double> effluentFaecalColiformsPer100ML,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Temperature of the outflow, or of the last bed where there is none.")
          List<Double> outflowTemperatureC) {}

  /**
   * The year at the end of the last bed; concentrations are flow-weighted means, null without
   * outflow.
   */
  @Meaning(
      "The year at the end of the last bed; concentrations are flow-weighted means, null without outflow.")
  public record Annual(
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that reaches the first bed.")
          double inflowM3,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Rain on all beds.")
          double rainM3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that beds and plants give to the air.")
          double evapotranspirationM3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that leaves the last bed.")
          double outflowM3,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Five-day biochemical oxygen demand.")
          Double effluentBod5MgL,
      @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Suspended solids.")
          Double effluentSuspendedSolidsMgL,
      @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Total nitrogen.")
          Double effluentTotalNitrogenMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Total phosphorus, in the fifth year.")
          Double effluentTotalPhosphorusMgL,
      @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium.")
          Double effluentPotassiumMgL,
      @Quantity(
              unit = "{CFU}/dL",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Faecal coliforms in 100 mL.")
          Double effluentFaecalColiformsPer100ML,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning =
                  "Share of the biochemical oxygen demand that the beds take; null if none comes.")
          Double bod5RemovedFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Share of the suspended solids that the beds take; null if none come.")
          Double suspendedSolidsRemovedFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Share of the nitrogen that the beds take; null if none comes.")
          Double totalNitrogenRemovedFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning =
                  "Share of the phosphorus that the beds take in the fifth year; null if none comes.")
          Double totalPhosphorusRemovedFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Powers of ten by which the number of coliforms falls; null where none come or none leave.")
          Double coliformLogRemoval,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Methane that the wet stands give off: a greenhouse gas that nobody catches.")
          double methaneKg) {}

  /** A month without outflow: its concentrations have no value. */
  @Meaning("A month without outflow: its concentrations have no value.")
  public record NoOutflow(
      @Quantity(unit = "1", min = 1, max = 12, meaning = "Month, 1 = January.") int month,
      @Meaning("Stable name of the reason.") @Size(max = 100) String code,
      @Meaning("The reason in words.") @Size(max = 1000) String text) {}

  /** One bed. */
  @Meaning("One bed.")
  public record Bed(
      @Meaning("Name of the bed in flows and balances.") @Size(max = 20) String name,
      @Meaning("How water stands in it.") BedKind kind,
      @Meaning("Medium; null for open water.") @Size(max = 60) String medium,
      @Meaning("Plant.") @Size(max = 60) String plant,
      @Quantity(unit = "m2", min = 0, max = Quantity.UNBOUNDED, meaning = "Area.") double areaM2,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Water that it holds.")
          double waterM3,
      @Meaning("Whether it is large enough for what it gets.") Loading loading,
      @Meaning("Whether water finds its way through the medium; null for open water.")
          Passage passage,
      @Meaning("How far it freezes; null where water stands below the surface.") Ice ice,
      @Meaning("By month.") BedMonthly monthly,
      @Meaning("Where nitrogen goes.") Fates nitrogen,
      @Meaning("Where phosphorus goes.") Fates phosphorus,
      @Meaning("Where potassium goes.") Fates potassium,
      @Meaning("Where organic matter goes.") OrganicMatter organicMatter,
      @Meaning("Other published models beside the figures above.") @Size(max = 10)
          List<SecondOpinion> secondOpinions) {}

  /**
   * What a bed gets for its size.
   *
   * @param warnGM2Day loading above which gravel is likely to clog and open water to turn foul
   * @param refuseGM2Day loading above which either is bound to
   */
  @Meaning("What a bed gets for its size.")
  public record Loading(
      @Quantity(
              unit = "g/(m2.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Biochemical oxygen demand in the heaviest month.")
          double bod5GM2Day,
      @Quantity(
              unit = "g/(m2.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Loading of a bed of the usual size.")
          double usualGM2Day,
      @Quantity(
              unit = "g/(m2.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Loading above which gravel is likely to clog, open water to turn foul.")
          double warnGM2Day,
      @Quantity(
              unit = "g/(m2.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Loading above which gravel is bound to clog, open water to turn foul.")
          double refuseGM2Day,
      @Quantity(
              unit = "cm/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water on its area in the wettest month.")
          double hydraulicLoadingCmDay,
      @Quantity(
              unit = "d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Time that water stays in the month of greatest flow; null without flow.")
          Double retentionDays,
      @Meaning("Answer.") Adequacy answer) {}

  /** Flow through gravel by the law of Darcy. */
  @Meaning("Flow through gravel by the law of Darcy.")
  public record Passage(
      @Quantity(unit = "m", min = 0, max = Quantity.UNBOUNDED, meaning = "Length along the flow.")
          double lengthM,
      @Quantity(unit = "m", min = 0, max = Quantity.UNBOUNDED, meaning = "Width across the flow.")
          double widthM,
      @Quantity(
              unit = "m/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Conductivity when clean.")
          double cleanConductivityMDay,
      @Quantity(
              unit = "m/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Conductivity in use, its pores filled in part.")
          double workingConductivityMDay,
      @Quantity(
              unit = "m3/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Flow that it passes with water below the surface.")
          double capacityM3Day,
      @Quantity(
              unit = "m3/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest monthly flow.")
          double greatestFlowM3Day,
      @Quantity(
              unit = "m",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Width that the greatest flow needs at this depth.")
          double neededWidthM,
      @Meaning("Answer.") Adequacy answer) {}

  /** How far open water freezes. */
  @Meaning("How far open water freezes.")
  public record Ice(
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Greatest thickness of ice over the depth of the water.")
          double depthFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the depth from which the bed cannot be relied on.")
          double limitFraction,
      @Size(max = 12)
          @Quantity(
              unit = "1",
              min = 1,
              max = 12,
              meaning =
                  "Months at whose end ice takes that share while water is led in, 1 = January.")
          List<Integer> months) {

    /** Whether water is led into the bed while it is frozen to its floor or nearly. */
    public boolean blocks() {
      return !months.isEmpty();
    }
  }

  /** One bed by month; concentrations are null in a month without outflow. */
  @Meaning("One bed by month; concentrations are null in a month without outflow.")
  public record BedMonthly(
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that enters it.")
          List<Double> inflowM3,
      @TwelveMonths
          @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Water led past it.")
          List<Double> passedByM3,
      @TwelveMonths
          @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Rain on it.")
          List<Double> rainM3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that it and its plants give to the air.")
          List<Double> evapotranspirationM3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that leaves it, with what was led past.")
          List<Double> outflowM3,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of its water.")
          List<Double> waterTemperatureC,
      @TwelveMonths
          @Quantity(
              unit = "m",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Ice on open water at the end of the month.")
          List<Double> iceM,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Biochemical oxygen demand of what leaves.")
          List<Double> bod5MgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Total nitrogen of what leaves.")
          List<Double> totalNitrogenMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Total phosphorus of what leaves, in the fifth year.")
          List<Double> totalPhosphorusMgL) {}

  /** Where a nutrient goes in a year of one bed. */
  @Meaning("Where a nutrient goes in a year of one bed.")
  public record Fates(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What the water brings, without what was led past.")
          double inflowKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What plants take up; part of what the bed removes.")
          double uptakeKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What leaves with organs and tops.")
          double harvestedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What comes back from decaying litter.")
          double returnedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What turns to nitrogen gas.")
          double gasKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "What the medium binds.")
          double sorbedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What is buried in the bed.")
          double buriedKg,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What the bed and its stand hold more at the end of the year.")
          double storedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What leaves with the water that passed the bed.")
          double outflowKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning =
                  "Share of harvest, gas, sorption and burial that is harvest; null where there is"
                      + " none of them.")
          Double harvestShareOfRemoval) {}

  /** Where organic matter goes in a year of one bed, as chemical oxygen demand. */
  @Meaning("Where organic matter goes in a year of one bed, as chemical oxygen demand.")
  public record OrganicMatter(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What the water brings, without what was led past.")
          double inflowKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "What plants make.")
          double photosynthesisKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What is burned, with the oxygen of air or nitrate.")
          double oxidisedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "The part of it that nitrate burned.")
          double oxidisedByNitrateKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "What leaves as methane.")
          double methaneKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What leaves with organs and tops.")
          double harvestedKg,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What the bed holds more at the end of the year.")
          double storedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What leaves with the water that passed the bed.")
          double outflowKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Oxygen that turned ammonium to nitrate; not part of the sums above.")
          double nitrificationOxygenKg) {}

  /**
   * What another published model says of the outflow of a bed, before rain and evapotranspiration.
   */
  @Meaning(
      "What another published model says of the outflow of a bed, before rain and evapotranspiration.")
  public record SecondOpinion(
      @Meaning("Name of the model.") @Size(max = 100) String method,
      @Meaning("What it tells.") @Size(max = 60) String quantity,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its value in the month of coldest water.")
          double coldestMonth,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its value in the month of warmest water.")
          double warmestMonth,
      @Meaning("Id of the source.") @Size(max = 100) String source) {}

  /** Area that a public rule asks for, for the flow and load of the heaviest month. */
  @Meaning("Area that a public rule asks for, for the flow and load of the heaviest month.")
  public record SizingRule(
      @Meaning("Stable name of the rule.") @Size(max = 100) String code,
      @Meaning("What the rule says.") @Size(max = 500) String text,
      @Meaning("Kind of bed that it is for.") BedKind kind,
      @Quantity(unit = "m2", min = 0, max = Quantity.UNBOUNDED, meaning = "Area that it asks for.")
          double areaM2,
      @Meaning("Whether all beds together are as large.") boolean met,
      @Meaning("Id of the source.") @Size(max = 100) String source) {}

  /**
   * Whether the outflow is fit for its use. Nothing here makes water safe for food that is eaten
   * raw.
   */
  @Meaning(
      "Whether the outflow is fit for its use. Nothing here makes water safe for food that is eaten raw.")
  public record Fitness(
      @Meaning("The use.") WaterUse use,
      @Meaning("By parameter.") @Size(max = 10) List<UseVerdict> parameters,
      @Meaning("The worst of all parameters in each month.") @Size(max = 12)
          List<UseAnswer> monthly,
      @Meaning("The worst of the year.") UseAnswer year) {}

  /** One parameter of the outflow against the limits of its use. */
  @Meaning("One parameter of the outflow against the limits of its use.")
  public record UseVerdict(
      @Meaning("The parameter.") @Size(max = 60) String parameter,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Up to this the water is fit.")
          double strictLimit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Above this it is not.")
          double lenientLimit,
      @TwelveMonths
          @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "The parameter in each month; null in one without outflow.")
          List<Double> values,
      @Meaning("Answer for each month.") @Size(max = 12) List<UseAnswer> monthly,
      @Meaning("Id of the source.") @Size(max = 100) String source) {}

  /** Soil that could take the whole inflow should the beds fail. */
  @Meaning("Soil that could take the whole inflow should the beds fail.")
  public record SoilAbsorption(
      @Quantity(
              unit = "m3/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest monthly flow.")
          double designFlowM3Day,
      @Quantity(
              unit = "L/(m2.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Long-term acceptance of septic-tank effluent by the soil.")
          double acceptanceLM2Day,
      @Meaning("Whether the soil takes any.") boolean suitable,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Area for untreated outflow of the tank; null where the soil is not suitable.")
          Double areaM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Ground kept free for its replacement; null where the soil is not suitable.")
          Double reserveM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Both together; null where the soil is not suitable.")
          Double totalM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Area for the outflow of the beds, which the soil takes more of; null where not suitable.")
          Double treatedAreaM2) {}

  /** Phosphorus in one year of the beds: their medium fills up. */
  @Meaning("Phosphorus in one year of the beds: their medium fills up.")
  public record PhosphorusYear(
      @Quantity(unit = "1", min = 1, max = 200, meaning = "Year of their life.") int year,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Flow-weighted mean of the outflow; null without outflow.")
          Double effluentTotalPhosphorusMgL,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Share that the beds take; null if none comes.")
          Double removedFraction) {}

  /** What a valve sent past the beds into the soil. */
  @Meaning("What a valve sent past the beds into the soil.")
  public record Diversion(
      @Size(max = 12)
          @Quantity(unit = "1", min = 1, max = 12, meaning = "Months in which it did, 1 = January.")
          List<Integer> months,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Water.") double waterM3,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Nitrogen.")
          double nitrogenKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Phosphorus.")
          double phosphorusKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium.")
          double potassiumKg) {}
}
