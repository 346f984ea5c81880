using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>Every stored choice in the shop's words. No page shows a choice's code name.</summary>
public static partial class Wording
{
    public static string Of(Species species) => species switch
    {
        Species.WhiteTailDeer => "White-tail deer",
        Species.MuleDeer => "Mule deer",
        Species.Elk => "Elk",
        Species.Moose => "Moose",
        Species.Pronghorn => "Pronghorn",
        Species.Bear => "Bear",
        Species.WildBoar => "Wild boar",
        Species.Hog => "Hog",
        Species.Beef => "Beef",
        Species.Bison => "Bison",
        Species.Lamb => "Lamb",
        Species.Goat => "Goat",
    };

    public static string Of(ArrivalState state) => state switch
    {
        ArrivalState.Whole => "Whole",
        ArrivalState.FieldDressed => "Field-dressed",
        ArrivalState.Skinned => "Skinned",
        ArrivalState.Quarters => "Quarters",
        ArrivalState.FreshBoned => "Boned, fresh",
        ArrivalState.FrozenBoned => "Boned, frozen",
        ArrivalState.Unknown => "Not known",
    };

    public static string Of(Sex sex) => sex switch
    {
        Sex.Unknown => "Not noted",
        Sex.Male => "Male",
        Sex.Female => "Female",
    };

    public static string Of(CattleAge age) => age switch
    {
        CattleAge.Unknown => "Age not known (handled as 30 months and over)",
        CattleAge.UnderThirtyMonths => "Under 30 months",
        CattleAge.ThirtyMonthsAndOver => "30 months and over",
    };

    public static string Of(DiseaseTest test) => test switch
    {
        DiseaseTest.NotRequired => "Not required",
        DiseaseTest.NotSampled => "Not sampled",
        DiseaseTest.HunterWillCall => "Hunter will call with the result",
        DiseaseTest.Pending => "Sampled, result pending",
        DiseaseTest.NotDetected => "Not detected",
        DiseaseTest.Detected => "Detected",
    };

    public static string Of(Portion portion) => portion switch
    {
        Portion.Whole => "Whole",
        Portion.Side => "Side",
        Portion.Quarter => "Quarter",
        Portion.Part => "Part",
    };

    public static string Of(PartKind kind) => kind switch
    {
        PartKind.Antlers => "Antlers",
        PartKind.Cape => "Cape",
        PartKind.Hide => "Hide",
        PartKind.Head => "Head",
        PartKind.Heart => "Heart",
        PartKind.Liver => "Liver",
        PartKind.Other => "Other part",
    };

    public static string Of(HoldReason reason) => reason switch
    {
        HoldReason.DiseaseTest => "waiting for the disease test",
        HoldReason.DiseaseDetected => "disease detected",
        HoldReason.MissingTag => "tag missing",
        HoldReason.Dispute => "in dispute",
        HoldReason.TooWarm => "came in too warm",
        HoldReason.CoolerFailed => "cooler failed",
        HoldReason.WrongMeatIn => "wrong meat or amount is in",
        HoldReason.RecordIncomplete => "record incomplete",
        HoldReason.Other => "other reason",
    };

    public static string Of(HeldAct act) => act switch
    {
        HeldAct.Cut => "cutting",
        HeldAct.BoneOut => "boning out and keeping apart",
        HeldAct.Grind => "splitting the grind",
        HeldAct.Batch => "going into a batch",
        HeldAct.Release => "release",
        HeldAct.HandOver => "handing over",
        HeldAct.SendToLaboratory => "sending the head to the laboratory",
    };

    public static string Of(WeighInKind kind) => kind switch
    {
        WeighInKind.Arrival => "Arrival",
        WeighInKind.HotHanging => "Hanging, hot",
        WeighInKind.ChilledHanging => "Hanging, chilled",
        WeighInKind.Quarters => "Quarters",
        WeighInKind.CutPack => "Cuts, packed",
        WeighInKind.LeanTrim => "Lean trim",
        WeighInKind.FatTrim => "Fat trim",
        WeighInKind.Bone => "Bone",
        WeighInKind.Discard => "Thrown out",
        WeighInKind.FinishedProduct => "Finished product",
        WeighInKind.Box => "Box",
        WeighInKind.LeftInMachines => "Left in the machines",
    };

    public static string Of(JobStage stage) => stage switch
    {
        JobStage.DetailsMissing => "Details missing",
        JobStage.InCooler => "In the cooler",
        JobStage.OnTable => "On the table",
        JobStage.TrimWeighed => "Trim weighed",
        JobStage.SplitAgreed => "In the kitchen",
        JobStage.Made => "Made, to be boxed",
        JobStage.Boxed => "Boxed, ready to go",
        JobStage.HandedOver => "Handed over",
    };

    public static string Of(BatchStage stage) => stage switch
    {
        BatchStage.Planned => "To be mixed",
        BatchStage.Mixed => "Mixed",
        BatchStage.Released => "Released",
        BatchStage.Ended => "Ended",
    };

    public static string Of(NextInKitchen next) => next switch
    {
        NextInKitchen.Held => "On hold",
        NextInKitchen.Draw => "Draw the meat",
        NextInKitchen.Mix => "Mix",
        NextInKitchen.Rest => "Let it rest",
        NextInKitchen.Stuff => "Stuff",
        NextInKitchen.Heat => "Into the smokehouse or oven",
        NextInKitchen.Cook => "Read the probes while it cooks",
        NextInKitchen.Chill => "Read the probes while it chills",
        NextInKitchen.Weigh => "Weigh what came out",
        NextInKitchen.Release => "Release",
    };

    public static string Of(BatchStepKind kind) => kind switch
    {
        BatchStepKind.RestStarted => "Put to rest",
        BatchStepKind.Stuffed => "Stuffed",
        BatchStepKind.HeatStarted => "Into the heat",
        BatchStepKind.ChillStarted => "Into the chill",
        BatchStepKind.Packed => "Packed",
    };

    public static string Of(ReadingStage stage) => stage switch
    {
        ReadingStage.Cooking => "Cooking",
        ReadingStage.Chilling => "Chilling",
        ReadingStage.Fermenting => "Fermenting",
    };

    public static string Of(ProcessKind kind) => kind switch
    {
        ProcessKind.Fresh => "Fresh",
        ProcessKind.CuredRaw => "Cured, raw",
        ProcessKind.Smoked => "Smoked",
        ProcessKind.Cooked => "Cooked",
        ProcessKind.Fermented => "Fermented",
        ProcessKind.Dried => "Dried",
    };

    public static string Of(FormulaBasis basis) => basis switch
    {
        FormulaBasis.PercentOfBlock => "% of meat block",
        FormulaBasis.OuncesPer100Pounds => "oz to 100 lb of meat block",
        FormulaBasis.OuncesPer25Pounds => "oz to 25 lb of meat block",
        FormulaBasis.GramsPerKilogram => "g to 1 kg of meat block",
    };

    public static string Of(Pooling pooling) => pooling switch
    {
        Pooling.Own => "Own meat only",
        Pooling.Pooled => "May be pooled with others",
    };

    public static string Of(AskKind kind) => kind switch
    {
        AskKind.OwnLean => "Own meat in it",
        AskKind.Finished => "Finished weight",
        AskKind.Percent => "Percent of the lean",
        AskKind.Rest => "The rest",
    };

    public static string Of(PackWrap wrap) => wrap switch
    {
        PackWrap.FreezerPaper => "Freezer paper",
        PackWrap.Vacuum => "Vacuum pack",
    };

    public static string Of(PersonRole role) => role switch
    {
        PersonRole.Hunter => "Hunter",
        PersonRole.DroppedOff => "Dropped off by",
        PersonRole.Payer => "Pays",
        PersonRole.Collector => "Collects",
    };

    public static string Of(ChargeBasis basis) => basis switch
    {
        ChargeBasis.Each => "each",
        ChargeBasis.HangingPound => "lb hanging",
        ChargeBasis.LeanPound => "lb lean",
        ChargeBasis.GreenPound => "lb green",
        ChargeBasis.FinishedPound => "lb finished",
        ChargeBasis.AddedFatPound => "lb added fat",
    };

    public static string Of(PriceFor @for) => @for switch
    {
        PriceFor.Animal => "Animal",
        PriceFor.Product => "Product",
        PriceFor.AddedFat => "Added fat",
        PriceFor.Extra => "Extra",
        PriceFor.Deposit => "Deposit",
    };

    public static string Of(PaymentMethod method) => method switch
    {
        PaymentMethod.Cash => "Cash",
        PaymentMethod.Check => "Check",
        PaymentMethod.Card => "Card",
        PaymentMethod.Other => "Other",
    };

    public static string Of(StaffRole role) => role switch
    {
        StaffRole.Clerk => "Counter",
        StaffRole.Cutter => "Cutting",
        StaffRole.Kitchen => "Kitchen",
        StaffRole.Manager => "Manager",
    };

    public static string Of(TagRule rule) => rule switch
    {
        TagRule.Refuse => "Refuse an animal without a tag",
        TagRule.Hold => "Take it in and hold it until the tag is there",
    };

    public static string Of(TicketKind kind) => kind switch
    {
        TicketKind.Claim => "Claim ticket",
        TicketKind.Carcass => "Carcass ticket",
        TicketKind.Part => "Part ticket",
        TicketKind.Filling => "Lug ticket",
        TicketKind.Batch => "Batch ticket",
        TicketKind.Box => "Box ticket",
    };
}
