using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Web.Pages.Trace;

namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>One job's packs go into boxes: counted by tap, weighed, put on a shelf; moved and unpacked where need be.</summary>
public sealed class JobModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public PackInput Input { get; set; } = new();

    [BindProperty]
    public BoxInput Handling { get; set; } = new();

    public FreezerJob Job { get; private set; } = null!;

    public BoxNet Net { get; private set; } = BoxNet.Nothing;

    /// <summary>The net is more than all that was made: the page asks once whether it is right.</summary>
    public bool AsksOnce { get; private set; }

    public ScaleDivision Division => shop.Settings.BenchDivision;

    public string? ToTrace(int boxId) => TraceAddress.IfOpen(SignedIn, TracedKind.Box, boxId);

    public string Unit => UnitFactors.Symbol(Division.Unit);

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    /// <summary>Packs and net so far, for the script while one types and for a press without it.</summary>
    public IActionResult OnPostNet(int id)
    {
        if (!Load(id))
            return NotFound();
        ReadBox();
        return IsLive ? Partial("_Net", Net) : Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        var box = ReadBox();
        if (box is not null)
            Look(box);
        if (!ModelState.IsValid || box is null)
            return Page();
        var outcome = verbs.Run("pack a box", Hand, FormKey, act => records.PackBox(box, act));
        if (!outcome.IsDone)
        {
            // What is counted wrong is said at the first count.
            ModelState.Add(outcome.Findings.Select(finding => finding.Field == "Packs" ? finding with { Field = "Lines[0].Packs" } : finding));
            return Page();
        }

        Say($"The box is packed: {Net.Packs}, {Net.Net} net. Print its label and stick it on.");
        return RedirectToPage(null, null, new { id }, $"box-{outcome.Result}");
    }

    public IActionResult OnPostMove(int id) => Handle(id, "move a box", act => records.MoveBox(Handling.BoxId, Handling.Place, act), "The box stands elsewhere now.");

    public IActionResult OnPostUnpack(int id) =>
        Handle(id, "unpack a box", act => records.UnpackBox(Handling.BoxId, Handling.Because, act), "The box is unpacked: its weight is struck out, its ticket is void. Box its packs anew.");

    public IActionResult OnPostFinish(int id)
    {
        var outcome = verbs.Run("finish boxing", Hand, FormKey, act => records.FinishBoxing(id, act));
        return Done(id, outcome, "Everything is in boxes: the job is ready to go.", null);
    }

    private IActionResult Handle(int id, string verb, Func<Act, Outcome> work, string done) =>
        records.Boxes.Any(box => box.Id == Handling.BoxId && box.JobId == id)
            ? Done(id, verbs.Run(verb, Hand, FormKey, work), done, string.Create(CultureInfo.InvariantCulture, $"box-{Handling.BoxId}"))
            : NotFound();

    private IActionResult Done(int id, Outcome outcome, string done, string? part)
    {
        if (outcome.IsDone)
        {
            Say(done);
            return RedirectToPage(null, null, new { id }, part);
        }

        ModelState.Add(outcome.Findings, nameof(Handling));
        return Load(id) ? Page() : NotFound();
    }

    private bool Load(int id)
    {
        if (FreezerJob.Read(records, shop, id) is not { } job)
            return false;
        Job = job;
        Input.Tare ??= job.LastTare is { } tare ? Division.PrintFigure(tare) : "";
        Input.Place ??= job.LastPlace ?? "";
        var typed = Input.Lines;
        Input.Lines = [.. job.Ready.Select(kind => new PackInput.LineInput { AllotmentId = kind.AllotmentId, Cut = CutOf(kind), Packs = Typed(typed, kind) })];
        // Something was released or struck since the form was drawn: what was typed stays with its kind.
        if (typed.Count > 0 && !typed.Select(line => (line.AllotmentId, line.Cut ?? "")).SequenceEqual(Input.Lines.Select(line => (line.AllotmentId, line.Cut ?? ""))))
            ModelState.ShowChanged("Input.Lines");
        return true;
    }

    private static string? CutOf(PackKind kind) => kind.AllotmentId is null ? kind.Name : null;

    private static string Typed(List<PackInput.LineInput> typed, PackKind kind) =>
        typed.FirstOrDefault(line => line.AllotmentId == kind.AllotmentId && (line.Cut ?? "") == (CutOf(kind) ?? ""))?.Packs ?? "";

    /// <summary>The box as typed; null where something of it can't be read.</summary>
    private BoxOrder? ReadBox()
    {
        List<PacksIn> packs = [];
        foreach (var (line, i) in Input.Lines.Select((line, i) => (line, i)).Where(one => !string.IsNullOrWhiteSpace(one.line.Packs)))
            packs.Add(new PacksIn(line.AllotmentId, line.Cut, ModelState.Read(CountText.Parse(line.Packs), $"Input.Lines[{i}].Packs")));
        var gross = Division.Round(ModelState.Read(WeightText.Parse(Input.Gross, Division.Unit), "Input.Gross"));
        var tare = string.IsNullOrWhiteSpace(Input.Tare) ? Weight.Zero : Division.Round(ModelState.Read(WeightText.Parse(Input.Tare, Division.Unit), "Input.Tare"));
        var count = packs.Sum(one => one.Packs);
        Net = new BoxNet(count == 1 ? "1 pack" : $"{count} packs", gross > tare ? shop.Print(gross - tare) : null);
        return ModelState.IsValid ? new BoxOrder(Job.Id, packs, gross, tare, Input.Place) : null;
    }

    private void Look(BoxOrder box)
    {
        var (net, made) = (box.Gross - box.Tare, Job.Made(Division));
        if (net <= made)
            return;
        AsksOnce = true;
        if (Input.Sure && Input.SureOf == Net.Net)
            return;
        ModelState.AddModelError("Input.Gross", $"{shop.Print(net)} net is more than all that was made for this job, {shop.Print(made)}. Type it again, or say that it is right.");
        ModelState.Remove("Input.Sure");
        ModelState.Remove("Input.SureOf");
        (Input.Sure, Input.SureOf) = (false, Net.Net);
    }

    public string Print(Weight weight) => shop.Print(weight);

    public string Moment(DateTime utc) => shop.Moment(utc);

    /// <summary>The boxes' net beside what was made, in words; empty where nothing was made or boxed.</summary>
    public string Difference
    {
        get
        {
            var (made, boxed) = (Job.Made(Division), Job.Boxed(Division));
            return (Division.CountOf(boxed) - Division.CountOf(made)) switch
            {
                0 => $"The boxes hold what was made: {shop.Print(made)}.",
                > 0 => $"The boxes hold {shop.Print(boxed)}, {shop.Print(boxed - made)} more than the {shop.Print(made)} made.",
                _ => $"The boxes hold {shop.Print(boxed)}, {shop.Print(made - boxed)} less than the {shop.Print(made)} made.",
            };
        }
    }

    public sealed class BoxInput
    {
        public int BoxId { get; set; }

        public string? Place { get; set; }

        public string? Because { get; set; }
    }
}
