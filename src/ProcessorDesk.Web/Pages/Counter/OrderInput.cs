using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.ModelBinding.Validation;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What is to be made of the meat, as typed: cuts, grind asks, and what goes with them.</summary>
public sealed class OrderInput
{
    public string Style { get; set; } = "all-grind";

    public List<CutInput> Cuts { get; set; } = [.. CutMenu.Groups.Select(group => new CutInput { Group = group.Code })];

    public List<AskInput> Asks { get; set; } = [new(), new()];

    public Pooling Pooling { get; set; } = Pooling.Own;

    public PackWrap Wrap { get; set; } = PackWrap.Vacuum;

    public bool NoPork { get; set; }

    public string PromisedFor { get; set; } = "";

    public string Notes { get; set; } = "";

    /// <summary>The products that can be asked for; put in by the page, never sent.</summary>
    [BindNever, ValidateNever]
    public IReadOnlyList<FormulaVersion> Offered { get; set; } = [];

    [BindNever, ValidateNever]
    public bool CutsLocked { get; set; }

    [BindNever, ValidateNever]
    public bool AsksLocked { get; set; }

    private CutMenu.Style Chosen => CutMenu.Styles.FirstOrDefault(style => style.Code == Style) ?? CutMenu.Styles[0];

    /// <summary>Somebody said something about the cuts; the style that stands there unasked is not yet an order.</summary>
    public bool SaysCuts => Chosen != CutMenu.Styles[0] || Cuts.Any(cut => cut.Cut != "" || cut.Detail != "" || cut.PerPack != "");

    /// <summary>Writes the style's cuts into the lines, so that each can be changed by hand.</summary>
    public void FillFromStyle()
    {
        foreach (var cut in Cuts)
            cut.Cut = Chosen.CutFor(cut.Group);
    }

    /// <summary>Moves an ask one up; the first stays where it is.</summary>
    public void MoveUp(int at)
    {
        if (at > 0 && at < Asks.Count)
            (Asks[at - 1], Asks[at]) = (Asks[at], Asks[at - 1]);
    }

    public TakenOrder Read(ModelStateDictionary state, DateOnly today, IEnumerable<AnimalInput> animals, string prefix = "Input.Order")
    {
        var asks = new List<PlannedAsk>();
        for (var i = 0; i < Asks.Count; i++)
        {
            if (!Asks[i].IsBlank && Asks[i].Read(state, $"{prefix}.Asks[{i}]", Offered, NoPork) is { } ask)
                asks.Add(ask);
        }

        if (asks.Count(ask => ask.Kind == AskKind.Rest) > 1)
            state.AddModelError($"{prefix}.Asks[{Asks.FindLastIndex(ask => !ask.IsBlank && ask.Kind == AskKind.Rest)}].Kind", "Another product takes the rest already. Give this one a weight or a percent.");
        return new TakenOrder(ReadCuts(state, prefix, animals), asks, ReadPromise(state, prefix, today), Pooling, Wrap, NoPork, Notes);
    }

    private List<CutOrderLine> ReadCuts(ModelStateDictionary state, string prefix, IEnumerable<AnimalInput> animals)
    {
        var backboneStays = animals.All(animal => animal.Species != Species.Beef || animal.CattleAge == CattleAge.UnderThirtyMonths);
        var lines = new List<CutOrderLine>();
        for (var i = 0; i < Cuts.Count; i++)
        {
            var cut = Cuts[i];
            var code = cut.Cut == "" ? Chosen.CutFor(cut.Group) : cut.Cut;
            if (CutMenu.Groups.FirstOrDefault(group => group.Code == cut.Group) is not { } group || !group.Cuts.Contains(code))
                state.AddModelError($"{prefix}.Cuts[{i}].Cut", "This cut is not on the menu for it. Choose another.");
            else if (CutMenu.HasBackbone(code) && !backboneStays)
                state.AddModelError($"{prefix}.Cuts[{i}].Cut", "Cattle of 30 months and over, or of unknown age, are cut without the backbone (9 CFR 310.22). Choose a cut without it.");
            int? perPack = cut.PerPack.Trim() == "" ? null : state.Read(CountText.Parse(cut.PerPack), $"{prefix}.Cuts[{i}].PerPack");
            lines.Add(new CutOrderLine(i, cut.Group, code, cut.Detail, perPack == 0 ? null : perPack));
        }

        return lines;
    }

    private DateOnly? ReadPromise(ModelStateDictionary state, string prefix, DateOnly today)
    {
        if (PromisedFor.Trim() == "")
            return null;
        if (!DateOnly.TryParse(PromisedFor, CultureInfo.InvariantCulture, out var day))
            state.AddModelError($"{prefix}.PromisedFor", "This does not read as a day. Type it like 2026-12-04, or leave it empty.");
        else if (day < today)
            state.AddModelError($"{prefix}.PromisedFor", "This day is past. Promise one that is still to come.");
        else
            return day;
        return null;
    }
}
