using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Saving a whole that somebody else may have saved since the form was shown.</summary>
internal static class Kept
{
    /// <summary>Stale where the thing was saved since this form was shown; otherwise null.</summary>
    public static Outcome? StaleSince(this IVersioned whole, int? shown) => shown is { } version && version != whole.Version ? Outcome.Stale() : null;

    /// <summary>The next press of the form is about what is kept now: the person has seen both.</summary>
    public static void SeenBoth(this ModelStateDictionary state, StationPage page, int version)
    {
        page.Version = version;
        state.Remove(FormKeyTag.VersionField);
    }
}

/// <summary>A field in which what was typed differs from what somebody else saved meanwhile.</summary>
public sealed record Difference(string Name, string Theirs, string Yours)
{
    /// <summary>The fields that differ of those given as name, theirs, yours.</summary>
    public static IReadOnlyList<Difference> Of(params (string Name, string? Theirs, string? Yours)[] fields) =>
    [
        .. fields
            .Where(field => Plain(field.Theirs) != Plain(field.Yours))
            .Select(field => new Difference(field.Name, Plain(field.Theirs), Plain(field.Yours)))
    ];

    private static string Plain(string? text) => (text ?? "").Replace("\r", "", StringComparison.Ordinal).Trim();
}
