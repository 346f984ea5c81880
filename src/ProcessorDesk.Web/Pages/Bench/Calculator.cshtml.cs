using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Web.Bench;

namespace ProcessorDesk.Web.Pages.BenchPages;

/// <summary>One calculator: its form, and the answer to what the address holds. Asked for JSON, the answer alone.</summary>
[LookOnly]
[IgnoreAntiforgeryToken]
public sealed class CalculatorModel : PageModel
{
    private static readonly Dictionary<string, List<string>> s_none = [];

    public Calculator Calculator { get; private set; } = null!;

    public Entries Entries { get; private set; } = null!;

    /// <summary>Null where the page was only opened, or there is none.</summary>
    public Answer? Answer { get; private set; }

    /// <summary>Words by field; empty where nothing is wrong.</summary>
    public IReadOnlyDictionary<string, List<string>> Problems { get; private set; } = s_none;

    public IActionResult OnGet(string calculator)
    {
        var json = BenchJson.IsWanted(Request);
        Response.Headers.Vary = "Accept";
        if (BenchList.Find(calculator) is not { } found)
            return json ? Problem(StatusCodes.Status404NotFound, "about:blank", "Not Found", "There is no such calculator.") : NotFound();
        (Calculator, Entries) = (found, Entries.Read(found.Fields, Request.Query));
        if (Entries.IsBlank && !json)
            return Page();
        Problems = Entries.Problems;
        var status = StatusCodes.Status400BadRequest;
        if (Problems.Count == 0)
            status = Work();
        if (!json)
        {
            Response.StatusCode = status;
            return Page();
        }

        return status switch
        {
            StatusCodes.Status200OK => Json(status, BenchJson.Plain, BenchJson.Write(Calculator, Answer!)),
            StatusCodes.Status422UnprocessableEntity => Problem(status, BenchJson.Impossible, "There is no answer", First()),
            _ => Problem(status, BenchJson.BadInput, "This can't be read", First()),
        };
    }

    private int Work()
    {
        var outcome = Calculator.Work(Entries);
        Answer = outcome as Answer;
        if (outcome is not Refusal refusal)
            return StatusCodes.Status200OK;
        Problems = refusal.Problems;
        return refusal.Status;
    }

    private string First() => Problems.First() is var (field, words) ? $"{field}: {words[0]}" : "";

    private ContentResult Problem(int status, string type, string title, string detail) =>
        Json(status, BenchJson.Problem, BenchJson.Write(status, type, title, detail, Problems));

    private static ContentResult Json(int status, string type, string body) => new() { StatusCode = status, ContentType = type, Content = body };
}
