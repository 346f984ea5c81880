using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.ModelBinding.Validation;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>One animal, or one delivery of loose meat, as typed.</summary>
public sealed class AnimalInput
{
    public Species Species { get; set; } = Species.WhiteTailDeer;

    public Sex Sex { get; set; }

    public string Tag { get; set; } = "";

    public string Licence { get; set; } = "";

    public string Confirmation { get; set; } = "";

    public string HarvestedOn { get; set; } = "";

    public string Area { get; set; } = "";

    public ArrivalState? State { get; set; }

    public string Weight { get; set; } = "";

    /// <summary>Why a weight that was written down before is another now.</summary>
    public string WeightBecause { get; set; } = "";

    public string Surface { get; set; } = "";

    public string Condition { get; set; } = "";

    public List<PartKind> Parts { get; set; } = [];

    public string PartNote { get; set; } = "";

    public DiseaseTest DiseaseTest { get; set; } = DiseaseTest.NotSampled;

    public string SampleNumber { get; set; } = "";

    public CattleAge CattleAge { get; set; }

    /// <summary>Which of how many on the page; put in by the page, never sent.</summary>
    [BindNever, ValidateNever]
    public (int Place, int Of) Standing { get; set; } = (1, 1);

    /// <summary>The next animal of the same delivery: most of what its papers say is the same.</summary>
    public AnimalInput Next() => new()
    {
        Species = Species,
        State = State,
        Licence = Licence,
        HarvestedOn = HarvestedOn,
        Area = Area,
    };

    /// <summary>What was typed, read; problems are noted on the fields.</summary>
    /// <param name="tagRule">What the shop does without a tag; null where a tag may come later.</param>
    public TakenAnimal Read(ModelStateDictionary state, string prefix, TagRule? tagRule, DateOnly today)
    {
        if (State is null)
            state.AddModelError($"{prefix}.State", "Choose how it came in.");
        if (tagRule == TagRule.Refuse && Texts.Key(Tag) is null)
            state.AddModelError($"{prefix}.Tag", "No animal is taken in here without its tag. Type the tag number.");
        if (SampleNumber.Trim() == "" && DiseaseTest is DiseaseTest.Pending)
            state.AddModelError($"{prefix}.SampleNumber", "Type the sample's number, so that the result finds this animal.");
        return Taken(ReadWeight(state, prefix), ReadSurface(state, prefix), ReadDay(state, prefix, today));
    }

    /// <summary>For "ticket now, details after": the tag and the weight alone.</summary>
    public TakenAnimal ReadLeast(ModelStateDictionary state, string prefix, TagRule tagRule, DateOnly today)
    {
        if (tagRule == TagRule.Refuse && Texts.Key(Tag) is null)
            state.AddModelError($"{prefix}.Tag", "No animal is taken in here without its tag. Type the tag number.");
        return Taken(ReadWeight(state, prefix), ReadSurface(state, prefix), ReadDay(new ModelStateDictionary(), prefix, today));
    }

    private TakenAnimal Taken(Weight? weight, Temperature? surface, DateOnly? harvestedOn) => new(Species, State ?? ArrivalState.Unknown)
    {
        Sex = Sex,
        CattleAge = CattleAge,
        Tag = Tag,
        Licence = Licence,
        Confirmation = Confirmation,
        HarvestedOn = harvestedOn,
        Area = Area,
        ArrivalWeight = weight,
        WeightBecause = WeightBecause,
        Surface = surface,
        Condition = Condition,
        DiseaseTest = DiseaseTest,
        SampleNumber = SampleNumber,
        Parts = Parts,
        PartNote = PartNote,
    };

    private Weight? ReadWeight(ModelStateDictionary state, string prefix)
    {
        if (Weight.Trim() == "")
            return null;
        var weight = state.Read(WeightText.Parse(Weight, WeightUnit.Pound), $"{prefix}.Weight");
        if (weight.IsZero && !state.HasProblem($"{prefix}.Weight"))
            state.AddModelError($"{prefix}.Weight", "An animal weighs more than zero. Type the weight, or leave it empty.");
        return weight;
    }

    private Temperature? ReadSurface(ModelStateDictionary state, string prefix) =>
        Surface.Trim() == "" ? null : state.Read(TemperatureText.ParseShowingCold(Surface), $"{prefix}.Surface");

    private DateOnly? ReadDay(ModelStateDictionary state, string prefix, DateOnly today)
    {
        if (HarvestedOn.Trim() == "")
            return null;
        if (!DateOnly.TryParse(HarvestedOn, CultureInfo.InvariantCulture, out var day))
            state.AddModelError($"{prefix}.HarvestedOn", "This does not read as a day. Type it like 2026-11-21.");
        else if (day > today)
            state.AddModelError($"{prefix}.HarvestedOn", "This day is still to come. Type the day it was killed.");
        else
            return day;
        return null;
    }
}
