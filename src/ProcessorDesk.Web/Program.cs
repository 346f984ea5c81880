using ProcessorDesk.Web;

var builder = WebApplication.CreateBuilder(args);
builder.Services.AddShell();

var app = builder.Build();
app.UseShell();
app.Run();
