using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Hosting;

/// <summary>Answers once the shop's file can be read.</summary>
internal static class Health
{
    public static IResult Answer(RecordsContext records) =>
        records.Shop.Any() ? Results.Text("ready") : Results.Text("not ready", statusCode: StatusCodes.Status503ServiceUnavailable);
}
